import type { ReactNode } from "react";
import { createPortal } from "react-dom";
import "./side-panel.css";

/**
 * A place for a panel over the edge of a page. The follow screen has a place of its own, beside its list.
 */
export function BesidePage({ children }: { readonly children: ReactNode }) {
  // A page keeps whatever is fixed within its own box and scrolls it along, so that the panel lies outside of it.
  return createPortal(<div className="beside-page">{children}</div>, document.body);
}
