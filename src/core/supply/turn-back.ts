import type { Duration } from "../units/index.ts";
import { minus } from "../units/index.ts";
import type { SupplyForecast } from "./supply-forecast.ts";

/** The supply whose redline is met first; whatever the caller tells supplies apart by goes with it. */
export function limitingSupply<Supply extends { readonly forecast: SupplyForecast }>(
  supplies: readonly Supply[],
): (Supply & { readonly redlineAt: Duration }) | null {
  let first: (Supply & { readonly redlineAt: Duration }) | null = null;
  for (const supply of supplies) {
    const { redlineAt } = supply.forecast;
    if (redlineAt !== null && (first === null || redlineAt < first.redlineAt))
      first = { ...supply, redlineAt };
  }
  return first;
}

/** The latest PET at which to turn back, and what sets it ([FOR3]). */
export interface TurnBack {
  /** Below zero when there never was time enough. */
  readonly at: Duration;
  readonly because: "supply" | "limit";
}

/**
 * Turn-back time: the redline of the limiting supply or the elapsed limit, whichever is first (the limit when both are at once),
 * minus the time the return takes, which for a crew that goes back together is the longest of theirs.
 * `null` when there is neither. It advises; the flight rules decide.
 */
export function turnBack(
  redlineAt: Duration | null,
  elapsedLimit: Duration | null,
  returnTime: Duration,
): TurnBack | null {
  if (redlineAt !== null && (elapsedLimit === null || redlineAt < elapsedLimit)) {
    return { at: minus(redlineAt, returnTime), because: "supply" };
  }
  return elapsedLimit === null ? null : { at: minus(elapsedLimit, returnTime), because: "limit" };
}
