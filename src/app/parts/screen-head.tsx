import type { ReactNode } from "react";
import { words } from "../../words/index.ts";

interface ScreenHeadProps {
  readonly title: string;
  /** What the screen shows of it. */
  readonly what: string;
  /** False where the screen below has a heading of its own. */
  readonly isHeading?: boolean;
  /** Where one can go from here: buttons. */
  readonly children: ReactNode;
}

/** The head of a screen beside the follow screen: what it shows, and the ways on. */
export function ScreenHead({ title, what, isHeading = true, children }: ScreenHeadProps) {
  return (
    <header className="screen-head">
      <div>
        {isHeading ? <h1>{title}</h1> : <p className="screen-title">{title}</p>}
        <p className="hint">{what}</p>
      </div>
      <nav className="panel-acts" aria-label={words("parts/screens")}>
        {children}
      </nav>
    </header>
  );
}
