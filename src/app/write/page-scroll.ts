/** The element that holds another one on the page, through the shadow roots of what stands around it; `null` at the top. */
function around(element: Element): Element | null {
  if (element.assignedSlot) return element.assignedSlot;
  if (element.parentElement) return element.parentElement;
  const root = element.getRootNode();
  return root instanceof ShadowRoot ? root.host : null;
}

/** The element that scrolls an element up and down: the nearest around it that may, else the page. */
export function scrollerOf(element: Element): Element {
  for (let at = around(element); at; at = around(at)) {
    const { overflowY } = getComputedStyle(at);
    if (overflowY === "auto" || overflowY === "scroll") return at;
  }
  return document.scrollingElement ?? document.documentElement;
}
