import type { ReactNode } from "react";
import { Component } from "react";
import { words } from "../../words/index.ts";

interface MistakeBoundaryProps {
  readonly children: ReactNode;
}

interface MistakeBoundaryState {
  readonly mistake: Error | null;
}

/** Replaces a screen that failed to draw, and says so and that no entry is lost. */
export class MistakeBoundary extends Component<MistakeBoundaryProps, MistakeBoundaryState> {
  override state: MistakeBoundaryState = { mistake: null };

  static getDerivedStateFromError(mistake: Error): MistakeBoundaryState {
    return { mistake };
  }

  override render(): ReactNode {
    const { mistake } = this.state;
    if (!mistake) return this.props.children;
    return (
      <main className="page-message" role="alert">
        <h1>{words("parts/mistake")}</h1>
        <p>{words("parts/mistake-kept")}</p>
        <p className="hint">{mistake.message}</p>
        <div className="panel-acts">
          <button type="button" className="main-button" onClick={() => window.location.reload()}>
            {words("parts/load-again")}
          </button>
          <a className="plain-button" href="/">
            {words("parts/shelf")}
          </a>
        </div>
      </main>
    );
  }
}
