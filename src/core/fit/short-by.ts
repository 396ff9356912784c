import type { Course } from "../course/index.ts";
import { riskModelOf, sampleRisk } from "../plan/index.ts";
import type { Duration } from "../units/index.ts";

/** A shortage is told in whole seconds. */
const SECOND = 1_000;

/** No limit would be later than this: a hundred days, in ms. */
const BEYOND = 100 * 86_400_000;

/**
 * Returns how much later a limit would have to be for a course to be done by it, with the chance that is asked for; in
 * whole seconds, rounded up. `null` when no limit would do, since too many samples fit no window.
 */
export function shortBy(
  course: Course,
  {
    limit,
    chance,
    samples,
    seed,
  }: {
    readonly limit: Duration | null;
    readonly chance: number | null;
    readonly samples: number;
    readonly seed: number;
  },
): Duration | null {
  if (limit === null) return null;
  const likely = Math.max(0, course.finish - limit);
  if (chance === null) return up(likely);
  const model = riskModelOf(course);
  const isEnough = (extra: number) =>
    (sampleRisk({ ...model, limit: limit + extra }, samples, seed + 1, { influence: false }).withinLimit ??
      0) >= chance;
  if (isEnough(likely)) return up(likely);
  let [short, enough] = [likely, likely + 60_000];
  while (!isEnough(enough)) {
    if (enough > BEYOND) return null;
    [short, enough] = [enough, enough * 2];
  }
  while (enough - short > SECOND) {
    const middle = (short + enough) / 2;
    if (isEnough(middle)) enough = middle;
    else short = middle;
  }
  return up(enough);
}

const up = (extra: number) => (Math.ceil(extra / SECOND) * SECOND) as Duration;
