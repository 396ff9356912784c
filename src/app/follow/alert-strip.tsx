import type { WalkAlert } from "../../core/walk/index.ts";
import { isShown } from "../../core/walk/index.ts";
import { words } from "../../words/index.ts";
import { AlertLine } from "./alert-line.tsx";
import type { AlertsPanelProps } from "./alerts-panel.tsx";

/** How many alerts stand in the strip; the others are behind a button. */
const MOST = 2;

/**
 * The one place of alerts on every size ([OFF3]), under the clock, the most urgent first. One that asks to act now stays
 * until it is over, the others until they are seen.
 */
export function AlertStrip({
  alerts,
  onList,
  ...line
}: Omit<AlertsPanelProps, "onClose"> & {
  /** Opens the list of all alerts. */
  readonly onList: () => void;
}) {
  const shown = alerts.filter(isShown);
  const most: WalkAlert["level"] | undefined = shown[0]?.level;
  return (
    <section
      className="alert-strip"
      aria-label={words("alert/alerts")}
      role={most === "act-now" ? "alert" : "status"}
      data-level={most}
    >
      {shown.length > 0 && (
        <ul>
          {shown.slice(0, MOST).map((alert) => (
            <AlertLine key={`${alert.alert} ${alert.level}`} alert={alert} {...line} />
          ))}
        </ul>
      )}
      {shown.length > MOST && (
        <button type="button" className="plain-button alert-more" onClick={onList}>
          {words("alert/more", { count: shown.length - MOST })}
        </button>
      )}
    </section>
  );
}
