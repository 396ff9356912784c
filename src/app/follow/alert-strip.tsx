import type { WalkAlert } from "../../core/walk/index.ts";
import { isShown } from "../../core/walk/index.ts";
import { words } from "../../words/index.ts";
import { AlertLine } from "./alert-line.tsx";
import type { AlertsPanelProps } from "./alerts-panel.tsx";
import { useIsSmall } from "./use-is-small.ts";

/** How many alerts stand in the strip; the others are behind a button. A phone has room for one. */
const MOST = 2;
const MOST_ON_SMALL = 1;

/**
 * The one place of alerts on every size ([OFF3]), under the clock, the most urgent first. One that asks to act now stays
 * until it is over, the others until they are seen.
 */
export function AlertStrip({
  alerts,
  onList,
  ...line
}: Omit<AlertsPanelProps, "onClose" | "onContingency"> & {
  /** Opens the list of all alerts. */
  readonly onList: () => void;
}) {
  const shown = alerts.filter(isShown);
  const room = useIsSmall() ? MOST_ON_SMALL : MOST;
  const more = shown.length - room;
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
          {shown.slice(0, room).map((alert, index) => (
            <AlertLine key={`${alert.alert} ${alert.level}`} alert={alert} {...line}>
              {more > 0 && index === room - 1 && (
                <button type="button" className="plain-button alert-more" onClick={onList}>
                  {words("alert/more", { count: more })}
                </button>
              )}
            </AlertLine>
          ))}
        </ul>
      )}
    </section>
  );
}
