import type { ReactNode } from "react";
import type { Alert } from "../../core/procedure/index.ts";
import { words } from "../../words/index.ts";

/** A warning, caution or note, distinguished by its word, its colour and its edge. */
export function AlertBox({
  level,
  children,
}: {
  readonly level: Alert["level"];
  /** Its text. */
  readonly children: ReactNode;
}) {
  return (
    <p className="alert-box" data-level={level}>
      <b>{words(`parts/alert-${level}`)}</b>
      <span>{children}</span>
    </p>
  );
}
