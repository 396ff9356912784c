import type { Location, Step } from "../procedure/index.ts";

/**
 * True when two steps of different revisions are the same work ([LRN6]): the same performers move the same items to the same
 * places and end at the same place. What their texts say does not matter.
 */
export function isSameWork(a: Step, b: Step): boolean {
  return workOf(a) === workOf(b);
}

const placeOf = (location: Location): string => JSON.stringify(location);

const workOf = ({ by, to, moves }: Step): string =>
  JSON.stringify([
    [...by].sort(),
    to ?? null,
    moves.map(({ item, to: where }) => `${item} ${placeOf(where)}`).sort(),
  ]);
