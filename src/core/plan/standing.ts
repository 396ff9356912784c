import type { Course } from "../course/index.ts";
import { crewPlaceAt } from "../course/index.ts";
import type { Ways } from "../place/index.ts";
import type { Duration, PlaceId } from "../units/index.ts";
import { NO_TIME } from "../units/index.ts";

/**
 * Where somebody stands when the work is broken off: at a place, or on a way between two. Then `back` is the time to the
 * place the way began at, and `on` the time to its end. `most` is the time of the whole way when it is not known how
 * much of it is behind them, and `null` when it is.
 */
export type Standing =
  | { readonly place: PlaceId }
  | {
      readonly from: PlaceId;
      readonly to: PlaceId;
      readonly back: Duration;
      readonly on: Duration;
      readonly most: Duration | null;
      /** The quickest way between the two over all routes, open or not; `null` when none joins them. */
      readonly quickest: Duration | null;
    };

/**
 * Where the crew member of a lane stands at a PET of a course; `null` when the procedure does not say. The part of a way
 * that is walked goes by time. A way takes as long as its step, or as the quickest routes where that is longer. Nobody
 * knows how far somebody is who should have arrived and has not.
 */
export function standingAt(course: Course, lane: number, pet: Duration, ways: Ways): Standing | null {
  const found = crewPlaceAt(course, lane, pet);
  if (found === null || "place" in found) return found;
  const { from, to, gone, time } = found;
  const quickest = ways.quickest(from, to)?.cost ?? null;
  const whole = quickest === null || time > quickest ? time : quickest;
  const isOverdue = gone >= time;
  // Rounded up, so that the way never comes out shorter than it is.
  const part = (of: number) => (isOverdue ? whole : (Math.ceil((of * whole) / time) as Duration));
  return { from, to, back: part(gone), on: part(time - gone), most: isOverdue ? whole : null, quickest };
}

/** The quickest way from where somebody stands to a place; `null` when no routes with a time lead there. */
export function quickestTo(standing: Standing, target: PlaceId, ways: Ways): Duration | null {
  return timeFrom(standing, ways, (place) => ways.quickest(place, target)?.cost ?? null);
}

/** The quickest way from where somebody stands to a refuge, and that refuge; `null` when none can be reached. */
export function quickestToRefuge(
  standing: Standing,
  ways: Ways,
): { readonly cost: Duration; readonly place: PlaceId } | null {
  const cost = timeFrom(standing, ways, (place) => ways.toRefuge(place)?.cost ?? null);
  if (cost === null) return null;
  const ends = "place" in standing ? [standing.place] : [standing.from, standing.to];
  const byEnd = ends
    .map((end, position) => ({ way: ways.toRefuge(end), more: moreTo(standing, position) }))
    .filter(({ way }) => way !== null)
    .sort((a, b) => (a.way?.cost ?? 0) + a.more - ((b.way?.cost ?? 0) + b.more));
  const place = byEnd[0]?.way?.places.at(-1);
  return place === undefined ? null : { cost, place };
}

const moreTo = (standing: Standing, end: number): Duration =>
  "place" in standing ? NO_TIME : end === 0 ? standing.back : standing.on;

/**
 * The time from where somebody stands, given the time from each place. On a way it is by the end from which it is
 * quicker, the part to that end included. Where it is not known how much is walked, it is the longest that may come out.
 * Where the way they are on is closed meanwhile, nobody knows on which side of that they are: both ends have to do.
 */
function timeFrom(
  standing: Standing,
  ways: Ways,
  from: (place: PlaceId) => Duration | null,
): Duration | null {
  if ("place" in standing) return from(standing.place);
  const [before, behind] = [from(standing.from), from(standing.to)];
  const { back, on, most, quickest } = standing;
  const isClosed =
    quickest !== null &&
    (ways.quickest(standing.from, standing.to)?.cost ?? Number.POSITIVE_INFINITY) > quickest;
  if (isClosed) {
    if (before === null || behind === null) return null;
    return Math.max((most ?? back) + before, (most ?? on) + behind) as Duration;
  }
  if (before === null && behind === null) return null;
  const a = before ?? Number.POSITIVE_INFINITY;
  const b = behind ?? Number.POSITIVE_INFINITY;
  if (most === null) return Math.min(back + a, on + b) as Duration;
  // The longest of min(walked + a, most − walked + b) for any part walked.
  return Math.min(most + Math.min(a, b), Math.ceil((most + a + b) / 2)) as Duration;
}
