import { Body, Equator, Horizon, MakeTime, Observer, SearchRiseSet } from "astronomy-engine";
import type { Instant } from "../units/index.ts";
import type { Site } from "./contact.ts";
import type { InstantSpan } from "./crossings.ts";

const DAY = 86_400_000;

/**
 * When the Sun is above a site's horizon in [from, to] (upper limb, standard refraction), from rise to set.
 *
 * A rise or a set is the same instant whatever `from` is: it is looked for from midnight to midnight (UTC), not from `from` on.
 */
export function sunUpSpansOf(
  { latitude, longitude, height }: Site,
  from: Instant,
  to: Instant,
): InstantSpan[] {
  const observer = new Observer(latitude, longitude, height);
  // The day before is looked through too, since its search reaches past midnight.
  const first = Math.floor(from / DAY - 1) * DAY;
  const crossings: Crossing[] = [];
  for (let midnight = first; midnight < to; midnight += DAY)
    crossings.push(...crossingsOf(observer, midnight));
  crossings.sort((a, b) => a.at - b.at);
  // What comes next says whether it is day; the limb itself is asked only when the Sun neither rises nor sets.
  const [next] = crossings;
  let rise = (next ? !next.rises : isUp(observer, from)) ? first : null;
  const spans: InstantSpan[] = [];
  const add = (start: number, end: number): void => {
    const span = { start: Math.max(start, from) as Instant, end: Math.min(end, to) as Instant };
    if (span.end > span.start) spans.push(span);
  };
  for (const { at, rises } of crossings) {
    if (rises) rise ??= at;
    else if (rise !== null) {
      add(rise, at);
      rise = null;
    }
  }
  if (rise !== null) add(rise, to);
  return spans;
}

interface Crossing {
  readonly at: number;
  readonly rises: boolean;
}

/** Further than the search's own tolerance (0.1 s), so that no rise is lost between two days; one found by both counts once. */
const OVERLAP = 60_000;

/** Rises and sets of the day that begins at a midnight, in no order. */
function crossingsOf(observer: Observer, midnight: number): Crossing[] {
  const crossings: Crossing[] = [];
  const end = midnight + DAY + OVERLAP;
  for (const direction of [1, -1]) {
    for (let at = midnight; at < end; at += 60_000) {
      const found = SearchRiseSet(Body.Sun, observer, direction, MakeTime(new Date(at)), (end - at) / DAY);
      if (!found) break;
      at = found.date.getTime();
      crossings.push({ at, rises: direction === 1 });
    }
  }
  return crossings;
}

/** The upper limb stands on the horizon when the centre is 50′ below it: 34′ of refraction and 16′ of the Sun's radius. */
const LIMB = -50 / 60;

function isUp(observer: Observer, instant: Instant): boolean {
  const time = MakeTime(new Date(instant));
  const { ra, dec } = Equator(Body.Sun, time, observer, true, true);
  return Horizon(time, observer, ra, dec).altitude > LIMB;
}
