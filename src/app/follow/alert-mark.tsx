import type { AlertLevel } from "../../core/walk/index.ts";
import { words } from "../../words/index.ts";

/** A shape for each level, so that levels differ where hue is gone. */
const SHAPES: Readonly<Record<AlertLevel, string>> = { "act-now": "▲", "look-soon": "◆", know: "●" };

/** The mark of an alert's level: a shape and the level in words. */
export function AlertMark({ level }: { readonly level: AlertLevel }) {
  return (
    <b className="alert-mark" data-level={level}>
      <span aria-hidden="true">{SHAPES[level]} </span>
      {words(`alert/level-${level}`)}
    </b>
  );
}
