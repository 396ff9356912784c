import type { ReactNode } from "react";
import { words } from "../../words/index.ts";

interface ScreenHeadProps {
  readonly title: string;
  /** What the screen shows about it. */
  readonly what: string;
  /** False where the screen has a heading of its own below. */
  readonly isHeading?: boolean;
  /** Buttons that lead to other screens. */
  readonly children: ReactNode;
}

/** The head of every screen except the follow screen: what it shows, and buttons that lead on. */
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
