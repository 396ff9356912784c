/** The part of a window that tells that the network may be back, or that somebody looks at the page. */
export interface PageParts {
  readonly document: Pick<Document, "visibilityState" | "addEventListener" | "removeEventListener">;
  addEventListener(type: "online" | "pageshow", listener: () => void): void;
  removeEventListener(type: "online" | "pageshow", listener: () => void): void;
}

/** Calls back when the network came back and when the page is shown (again); returns a function that ends it. */
export function watchPage(page: PageParts, onHope: () => void): () => void {
  const onVisibility = () => {
    if (page.document.visibilityState === "visible") onHope();
  };
  page.addEventListener("online", onHope);
  page.addEventListener("pageshow", onHope);
  page.document.addEventListener("visibilitychange", onVisibility);
  return () => {
    page.removeEventListener("online", onHope);
    page.removeEventListener("pageshow", onHope);
    page.document.removeEventListener("visibilitychange", onVisibility);
  };
}
