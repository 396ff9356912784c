import { Component, type ReactNode } from "react";

interface MissingPartProps {
  /** Stands in its place when a part could not be loaded or drawn. */
  readonly said: string;
  readonly children: ReactNode;
}

/** Stands in for a part of a screen that could not be loaded or drawn; the screen around it goes on. */
export class MissingPart extends Component<MissingPartProps, { readonly isMissing: boolean }> {
  override state = { isMissing: false };

  static getDerivedStateFromError(): { readonly isMissing: boolean } {
    return { isMissing: true };
  }

  override render(): ReactNode {
    if (!this.state.isMissing) return this.props.children;
    return <p role="alert">{this.props.said}</p>;
  }
}
