import { Body, Equator, Horizon, MakeTime, Observer, SearchRiseSet } from "astronomy-engine";
import type { Instant } from "../units/index.ts";
import type { Site } from "./contact.ts";
import type { InstantSpan } from "./crossings.ts";

const DAY = 86_400_000;

/** When the Sun is above a site's horizon in [from, to] (upper limb, standard refraction), from rise to set. */
export function sunUpSpansOf(
  { latitude, longitude, height }: Site,
  from: Instant,
  to: Instant,
): InstantSpan[] {
  const observer = new Observer(latitude, longitude, height);
  const days = Math.max(1, (to - from) / DAY + 1);
  // A rise is kept positive and a set negative, so that one list in time tells both.
  const edges: number[] = [];
  let next: number | null = null;
  for (const direction of [1, -1]) {
    for (let at = from as number; at < to; ) {
      const found = SearchRiseSet(Body.Sun, observer, direction, MakeTime(new Date(at)), days);
      if (!found) break;
      at = found.date.getTime();
      if (next === null || at < Math.abs(next)) next = at * direction;
      if (at > to) break;
      edges.push(at * direction);
      at += 60_000;
    }
  }
  const inTime = edges.toSorted((a, b) => Math.abs(a) - Math.abs(b));
  const spans: InstantSpan[] = [];
  // What comes next says whether it is day now; the limb itself is asked only when the Sun neither rises nor sets.
  const isDay = next === null ? isUp(observer, from) : next < 0;
  let start: number | null = isDay ? from : null;
  for (const edge of inTime) {
    if (edge > 0) start ??= edge;
    else if (start !== null) {
      spans.push({ start: start as Instant, end: -edge as Instant });
      start = null;
    }
  }
  if (start !== null) spans.push({ start: start as Instant, end: to });
  return spans;
}

/** The upper limb stands on the horizon when the centre is 50′ below it: 34′ of refraction and 16′ of the Sun's radius. */
const LIMB = -50 / 60;

function isUp(observer: Observer, instant: Instant): boolean {
  const time = MakeTime(new Date(instant));
  const { ra, dec } = Equator(Body.Sun, time, observer, true, true);
  return Horizon(time, observer, ra, dec).altitude > LIMB;
}
