import { useState } from "react";
import { createPortal } from "react-dom";
import { words } from "../../words/index.ts";
import { HelpPanel } from "./help-panel.tsx";
import type { HelpScreen } from "./help-sections.ts";

/**
 * A button that opens the help of a screen in a panel over its edge, and closes it again. The follow screen has a place
 * of its own for panels and draws {@link HelpPanel} there.
 */
export function HelpButton({ screen }: { readonly screen: HelpScreen }) {
  const [isOpen, setIsOpen] = useState(false);
  return (
    <>
      <button
        type="button"
        className="plain-button"
        aria-expanded={isOpen}
        onClick={() => setIsOpen(!isOpen)}
      >
        {words("parts/help")}
      </button>
      {isOpen &&
        // A page keeps whatever is fixed within its own box and scrolls it along, so that the panel lies outside of it.
        createPortal(
          <div className="help-over">
            <HelpPanel screen={screen} onClose={() => setIsOpen(false)} />
          </div>,
          document.body,
        )}
    </>
  );
}
