import { useState } from "react";
import { words } from "../../words/index.ts";
import { BesidePage } from "../panel/index.ts";
import type { HelpScreen } from "./help-contents.ts";
import { HelpPanel } from "./help-panel.tsx";

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
      {isOpen && (
        <BesidePage>
          <HelpPanel screen={screen} onClose={() => setIsOpen(false)} />
        </BesidePage>
      )}
    </>
  );
}
