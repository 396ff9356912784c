import type { ReactNode } from "react";
import type { Alert } from "../../core/procedure/index.ts";
import { words } from "../../words/index.ts";

/** A shape for each level, so that a black and white print distinguishes them by more than the word. */
const SHAPES: Readonly<Record<Alert["level"], string>> = {
  warning: "M11 2L21 20H1Z",
  caution: "M11 1L21 11 11 21 1 11Z",
  note: "M11 1a10 10 0 1 0 .01 0Z",
};

/** An alert as printed, with the shape, word and edge of its level. */
export function AlertRow({
  level,
  children,
}: {
  readonly level: Alert["level"];
  /** Its text. */
  readonly children: ReactNode;
}) {
  return (
    <p className={`print-alert print-alert-${level}`}>
      <svg width="22" height="22" viewBox="0 0 22 22" aria-hidden="true">
        <path d={SHAPES[level]} />
        <path d={level === "note" ? "M11 9v7M11 5v2" : "M11 8v6M11 16v2"} />
      </svg>
      <b>{words(`parts/alert-${level}`)}</b> <span>{children}</span>
    </p>
  );
}
