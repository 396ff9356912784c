import type { Duration } from "../units/index.ts";
import { minus } from "../units/index.ts";
import type { SupplyForecast } from "./supply-forecast.ts";

/**
 * The supply that reaches its redline first. The element is returned whole, with whatever the caller identifies
 * supplies by.
 */
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

/** The latest PET at which to turn back, and what determines it ([FOR3]). */
export interface TurnBack {
  /** Below zero when there was never enough time. */
  readonly at: Duration;
  readonly because: "supply" | "limit";
}

/**
 * Turn-back time: the redline of the limiting supply or the elapsed limit, whichever is earlier (the limit when they
 * are equal), minus the return time. For crew members who go back together, the return time is the longest of theirs.
 * Returns `null` when there is neither a redline nor a limit. The result is advice; the flight rules decide.
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
