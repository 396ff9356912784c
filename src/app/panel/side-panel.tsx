import type { ReactNode } from "react";
import { useEffect, useId, useRef } from "react";
import { words } from "../../words/index.ts";
import "./side-panel.css";

interface SidePanelProps {
  readonly title: string;
  readonly onClose: () => void;
  readonly children: ReactNode;
}

/**
 * A panel over the list that never covers the clock or the cards. Focus moves into it when it opens and back when it
 * closes. Escape closes it.
 */
export function SidePanel({ title, onClose, children }: SidePanelProps) {
  const panel = useRef<HTMLElement>(null);
  const heading = useId();
  useEffect(() => {
    const before = document.activeElement;
    panel.current?.focus();
    return () => {
      if (before instanceof HTMLElement && before.isConnected) before.focus();
    };
  }, []);
  return (
    <section
      ref={panel}
      className="side-panel"
      role="dialog"
      aria-labelledby={heading}
      tabIndex={-1}
      onKeyDown={(event) => {
        if (event.key === "Escape") onClose();
      }}
    >
      <div className="side-head">
        <h2 id={heading}>{title}</h2>
        <button type="button" className="plain-button" onClick={onClose}>
          {words("panel/back")}
        </button>
      </div>
      {/* It scrolls, so that a keyboard must be able to reach it whatever it holds. */}
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls takes the focus. */}
      <section className="side-body" tabIndex={0} aria-labelledby={heading}>
        {children}
      </section>
    </section>
  );
}
