import type { Location, Step } from "../procedure/index.ts";

/**
 * True when two steps of different revisions are the same work ([LRN6]): the same performers move the same items to the same
 * places and end at the same place. What their texts say does not matter.
 */
export function isSameWork(a: Step, b: Step): boolean {
  return a === b || workOf(a) === workOf(b);
}

const placeOf = (location: Location): string => JSON.stringify(location);

/** What was worked out of a step before: a step of the procedure is looked at once for each walk. */
const works = new WeakMap<Step, string>();

function workOf(step: Step): string {
  const known = works.get(step);
  if (known !== undefined) return known;
  const { by, to, moves } = step;
  const work = JSON.stringify([
    [...by].sort(),
    to ?? null,
    moves.map(({ item, to: where }) => `${item} ${placeOf(where)}`).sort(),
  ]);
  works.set(step, work);
  return work;
}
