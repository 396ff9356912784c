import type { DrawnNode } from "../../core/worksite/index.ts";

const SVG = "http://www.w3.org/2000/svg";

/**
 * Layers of a drawing as they stand in a group of the page. This is the one place that writes drawings to the page: straight to
 * the elements, and only what differs from what stands there ([MAP6]). Nothing else may change what is in the group.
 */
export class WrittenLayers {
  readonly #group: Element;
  #written: readonly DrawnNode[] = [];

  constructor(group: Element) {
    this.#group = group;
  }

  readonly write = (layers: readonly DrawnNode[]): void => {
    rewriteChildren(this.#group, this.#written, layers);
    this.#written = layers;
  };
}

function elementOf({ tag, attributes, children, text }: DrawnNode): Element {
  const element = document.createElementNS(SVG, tag);
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, String(value));
  if (text === null) element.append(...children.map(elementOf));
  else element.textContent = text;
  return element;
}

function rewrite(element: Element, was: DrawnNode, is: DrawnNode): void {
  if (was === is) return;
  for (const [name, value] of Object.entries(is.attributes))
    if (was.attributes[name] !== value) element.setAttribute(name, String(value));
  for (const name of Object.keys(was.attributes)) if (!(name in is.attributes)) element.removeAttribute(name);
  if (was.text !== null || is.text !== null) {
    if (was.text === is.text) return;
    element.textContent = is.text;
    if (is.text === null) element.append(...is.children.map(elementOf));
  } else rewriteChildren(element, was.children, is.children);
}

/** Somebody stays the same element when others come and go, so that what is theirs can slide; others go by their place. */
const nameOf = ({ tag, attributes }: DrawnNode, place: number): string =>
  [tag, attributes["data-crew"] ?? place].join(" ");

function rewriteChildren(parent: Element, was: readonly DrawnNode[], is: readonly DrawnNode[]): void {
  if (was === is) return;
  const isSameRow =
    was.length === is.length &&
    is.every((node, place) => {
      const before = was[place];
      return before === node || (before && nameOf(before, place) === nameOf(node, place));
    });
  if (isSameRow) {
    let element = parent.firstElementChild;
    for (const [place, node] of is.entries()) {
      if (element) rewrite(element, was[place] as DrawnNode, node);
      element = element?.nextElementSibling ?? null;
    }
    return;
  }
  const there = new Map(
    [...parent.children].map((element, place) => [
      nameOf(was[place] as DrawnNode, place),
      { element, node: was[place] as DrawnNode },
    ]),
  );
  const row = is.map((node, place) => {
    const kept = there.get(nameOf(node, place));
    if (!kept) return elementOf(node);
    there.delete(nameOf(node, place));
    rewrite(kept.element, kept.node, node);
    return kept.element;
  });
  for (const { element } of there.values()) element.remove();
  for (const [place, element] of row.entries())
    if (parent.children[place] !== element) parent.insertBefore(element, parent.children[place] ?? null);
}
