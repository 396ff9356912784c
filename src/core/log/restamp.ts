import type { Instant } from "../units/index.ts";
import type { Entry } from "./entry.ts";
import { compareEntries } from "./entry.ts";

import type { HybridTime } from "./hybrid-clock.ts";
import { laterOf, tick, wallOf } from "./hybrid-clock.ts";
import { withStamp } from "./statement.ts";

/** How far a hybrid time may be ahead of a hub's clock before the hub refuses its entry, in ms (inclusive). */
export const FARTHEST_AHEAD = 60_000;

/** Whether a hub whose clock shows `clock` would refuse a hybrid time as being ahead of it. */
export function isTooFarAhead(time: HybridTime, clock: Instant): boolean {
  return wallOf(time) > clock + FARTHEST_AHEAD;
}

/** The latest of hybrid times that is not too far ahead of `clock`; `null` when there is none. */
export function highestWithin(times: Iterable<HybridTime>, clock: Instant): HybridTime | null {
  let highest: HybridTime | null = null;
  for (const time of times) if (!isTooFarAhead(time, clock)) highest = laterOf(highest, time);
  return highest;
}

/**
 * Returns the entries restamped: the same statements, in the order of the log, with hybrid times of `clock` in that order.
 * The first time is after `seen`, unless `seen` is `null` or itself too far ahead of `clock`.
 */
export function restamp(
  entries: readonly Entry[],
  clock: Instant,
  seen: HybridTime | null,
): readonly Entry[] {
  let last = seen !== null && isTooFarAhead(seen, clock) ? null : seen;
  return [...entries].sort(compareEntries).map((entry) => {
    const hlc = tick(last, clock);
    last = hlc;
    return withStamp(entry, hlc);
  });
}
