import type { Duration } from "../units/index.ts";
import { minus } from "../units/index.ts";
import type { Risk } from "./risk-summary.ts";

/** A finish, and what is left of the elapsed limit then. */
export interface Outcome {
  /** PET; `null` when there is none: nothing is planned or forecast, or so many samples fit no window. */
  readonly finish: Duration | null;
  /** Limit − finish, below zero when over; `null` without a finish or a limit. */
  readonly margin: Duration | null;
}

/** The finish of a walk in the four ways in which it is told ([OFF8]). */
export interface Outlook {
  readonly planned: Outcome;
  /** By likely times from what has happened so far. */
  readonly forecast: Outcome;
  /** By which half of the samples finish; `null` while nothing is sampled. */
  readonly half: Outcome | null;
  /** By which nine in ten of the samples finish; `null` while nothing is sampled. */
  readonly nineInTen: Outcome | null;
}

/** Returns the outlook for an elapsed limit, which is `null` when there is none. Samples count to the next millisecond. */
export function outlookOf(
  limit: Duration | null,
  planned: Duration | null,
  forecast: Duration | null,
  risk: Pick<Risk, "p50" | "p90"> | null,
): Outlook {
  const outcome = (at: number | null): Outcome => {
    const finish = at === null ? null : (Math.ceil(at) as Duration);
    return { finish, margin: finish === null || limit === null ? null : minus(limit, finish) };
  };
  return {
    planned: outcome(planned),
    forecast: outcome(forecast),
    half: risk && outcome(risk.p50),
    nineInTen: risk && outcome(risk.p90),
  };
}
