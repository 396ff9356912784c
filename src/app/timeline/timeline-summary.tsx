import type { ReactNode } from "react";
import type { Outcome, Risk } from "../../core/plan/index.ts";
import { outlookOf } from "../../core/plan/index.ts";
import type { Duration, Instant } from "../../core/units/index.ts";
import { later } from "../../core/units/index.ts";
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
  /** The instant of PET 0; `null` when it is not known. */
  readonly start: Instant | null;
  /** What sampling gave; `null` when unknown. */
  readonly risk: Risk | null;
}

/** When the walk finishes, and how that compares with the plan and the limit, in one line. */
export function TimelineSummary({ finish, forecast, limit, ended, risk, start }: TimelineSummaryProps) {
  const last = forecast ?? finish;
  const odds = risk?.withinLimit ?? null;
  const { half, nineInTen } = outlookOf(limit, finish, forecast, risk);
  return (
    <>
      <Worded message={finishMessage(finish, forecast, ended)} marks={STRONG} />
      {start !== null && ` ${words("timeline/at-utc", { at: later(start, last) })}`}
      {limit !== null && (
        <>
          {` · ${words("timeline/limit", { at: limit })} · `}
          <strong>
            {last <= limit
              ? words("timeline/margin", { time: (limit - last) as Duration })
              : words("timeline/over-limit", { time: (last - limit) as Duration })}
          </strong>
          {odds !== null && !ended && ` · ${words("timeline/within-limit", { share: odds })}`}
        </>
      )}
      {!ended && half && ` · ${outcomeWords("half", half)}`}
      {!ended && nineInTen && ` · ${outcomeWords("nine-in-ten", nineInTen)}`}
    </>
  );
}

/** By when a share of the samples finishes, and what is left of the limit then. */
function outcomeWords(share: "half" | "nine-in-ten", { finish, margin }: Outcome): string {
  if (finish === null) return words(`outlook/${share}-none`);
  if (margin === null) return words(`outlook/${share}`, { finish });
  return words(margin < 0 ? `outlook/${share}-over` : `outlook/${share}-margin`, { finish, margin });
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
