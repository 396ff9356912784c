import type { ReactNode } from "react";
import type { Duration } from "../../core/units/index.ts";
import type { Message } from "../../words/index.ts";
import { message, words } from "../../words/index.ts";
import { Worded } from "../parts/index.ts";
import { differenceText } from "./step-words.ts";

export interface TimelineSummaryProps {
  /** The planned finish, in PET. */
  readonly finish: Duration;
  /** The forecast finish, in PET; `null` for a plan alone. */
  readonly forecast: Duration | null;
  /** The elapsed limit; `null` without one. */
  readonly limit: Duration | null;
  /** True when the walk is closed. */
  readonly ended: boolean;
  /** The probability of finishing within the limit; `null` when unknown. */
  readonly odds: number | null;
}

/** When the walk finishes, and how that compares with the plan and the limit, in one line. */
export function TimelineSummary({ finish, forecast, limit, ended, odds }: TimelineSummaryProps) {
  const last = forecast ?? finish;
  return (
    <>
      <Worded message={finishMessage(finish, forecast, ended)} marks={STRONG} />
      {limit !== null && (
        <>
          {` · ${words("timeline/limit", { at: limit })} · `}
          <strong>
            {last <= limit
              ? words("timeline/margin", { time: (limit - last) as Duration })
              : words("timeline/over-limit", { time: (last - limit) as Duration })}
          </strong>
          {odds !== null &&
            !ended &&
            ` · ${words("timeline/within-limit", { share: Math.round(odds * 100) })}`}
        </>
      )}
    </>
  );
}

const STRONG = { strong: (inside: ReactNode) => <strong>{inside}</strong> };

function finishMessage(finish: Duration, forecast: Duration | null, ended: boolean): Message {
  if (forecast === null) return message("timeline/planned-finish-strong", { at: finish });
  return ended
    ? message("timeline/last-step-done-strong", { at: forecast })
    : message("timeline/forecast-finish-strong", {
        at: forecast,
        difference: differenceText(forecast - finish),
      });
}
