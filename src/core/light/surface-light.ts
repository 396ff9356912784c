import { Body, Equator, Horizon, MakeTime, Observer, SearchRiseSet } from "astronomy-engine";
import type { Instant } from "../units/index.ts";
import type { Site } from "./contact.ts";
import type { InstantSpan } from "./crossings.ts";

const DAY = 86_400_000;

/**
 * The spans in [from, to] during which the Sun's upper limb is above a site's horizon, with standard refraction, from
 * sunrise to sunset.
 *
 * A sunrise or sunset is the same instant whatever `from` is, because the search runs from midnight to midnight (UTC)
 * and does not begin at `from`.
 */
export function sunUpSpansOf(
  { latitude, longitude, height }: Site,
  from: Instant,
  to: Instant,
): InstantSpan[] {
  const observer = new Observer(latitude, longitude, height);
  // The day before is searched too, since its search reaches past midnight.
  const first = Math.floor(from / DAY - 1) * DAY;
  const crossings: Crossing[] = [];
  for (let midnight = first; midnight < to; midnight += DAY)
    crossings.push(...crossingsOf(observer, midnight));
  crossings.sort((a, b) => a.at - b.at);
  // The next crossing tells whether it is day. The limb itself is computed only when the Sun neither rises nor sets.
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

/**
 * More than the search's own tolerance (0.1 s), so that no sunrise is lost between two days. One that both days find
 * counts once.
 */
const OVERLAP = 60_000;

/** The sunrises and sunsets of the day that begins at a midnight, in no particular order. */
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

/**
 * The upper limb is on the horizon when the Sun's centre is 50′ below it: 34′ of refraction and 16′ of the Sun's
 * radius.
 */
const LIMB = -50 / 60;

function isUp(observer: Observer, instant: Instant): boolean {
  const time = MakeTime(new Date(instant));
  const { ra, dec } = Equator(Body.Sun, time, observer, true, true);
  return Horizon(time, observer, ra, dec).altitude > LIMB;
}
