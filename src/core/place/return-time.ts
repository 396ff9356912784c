import type { Network } from "../order/index.ts";
import type { Outline } from "../procedure/index.ts";
import type { Duration, PlaceId } from "../units/index.ts";
import { minus, NO_TIME, plus } from "../units/index.ts";
import type { Ways } from "./ways.ts";
import { waysOf } from "./ways.ts";
import type { Whereabouts } from "./whereabouts.ts";

/** How long it takes to get back in from a place ([PLN6]). */
export interface ReturnTime {
  readonly from: PlaceId;
  readonly refuge: PlaceId;
  /** The time along the quickest routes. */
  readonly way: Duration;
  /** The time of the closeout steps that have not been begun. */
  readonly closeout: Duration;
  /** The sum of both. */
  readonly total: Duration;
}

/**
 * The time from a place to the nearest refuge by the quickest route, plus the likely durations of the given closeout
 * steps (reading order indices of the steps of one lane that have not been begun). Returns `null` when no routes with a
 * time lead to a refuge.
 */
export function returnTimeFrom(
  outline: Outline,
  { times }: Pick<Whereabouts, "times">,
  place: PlaceId,
  closeoutSteps: readonly number[],
): ReturnTime | null {
  const closeout = closeoutSteps.reduce<Duration>(
    (sum, index) => plus(sum, times[index]?.likely ?? NO_TIME),
    NO_TIME,
  );
  return returnTime(waysOf(outline.procedure), place, closeout);
}

function returnTime(ways: Ways, from: PlaceId, closeout: Duration): ReturnTime | null {
  const way = ways.toRefuge(from);
  const refuge = way?.places.at(-1);
  if (!way || refuge === undefined) return null;
  return { from, refuge, way: way.cost, closeout, total: plus(way.cost, closeout) };
}

/**
 * For each step (by reading order index) and each of its performers (in the order of `performers`): the return time
 * from the place where the step ends, including the closeout steps after it in the performer's lane. `null` for
 * inactive steps, for crew members who are not outside, where the place is unknown, and where no routes with a time
 * lead to a refuge.
 */
export function returnTimesOf(
  { outline, lanes }: Network,
  { from, times }: Whereabouts,
): (readonly (ReturnTime | null)[])[] {
  const ways = waysOf(outline.procedure);
  const found = outline.steps.map(({ performers }): (ReturnTime | null)[] => performers.map(() => null));
  for (const [lane, indices] of lanes.entries()) {
    if (outline.crew[lane]?.station !== "outside") continue;
    let closeout: Duration = NO_TIME;
    for (const index of indices.toReversed()) {
      const entry = outline.steps[index];
      const seats = found[index];
      if (!entry || !seats) continue;
      const seat = entry.performers.indexOf(lane);
      const place = entry.step.to ?? from[index]?.[seat] ?? null;
      if (place !== null) seats[seat] = returnTime(ways, place, closeout);
      if (entry.task.closeout) closeout = plus(closeout, times[index]?.likely ?? NO_TIME);
    }
  }
  return found;
}

/**
 * The latest PET to turn back and still be in by the elapsed limit ([PLN6]). It is below zero when there was never
 * enough time.
 */
export function latestTurnBack(limit: Duration, { total }: ReturnTime): Duration {
  return minus(limit, total);
}
