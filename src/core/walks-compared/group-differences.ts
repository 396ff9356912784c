import type { OutlineStep } from "../procedure/index.ts";
import { holm, welch } from "../statistics/index.ts";
import type { WalkId } from "../units/index.ts";
import type { ComparedStep } from "./compare-walks.ts";

/** How one step differs between two groups of walks ([CMP1]). */
export interface GroupDifference {
  readonly entry: OutlineStep;
  /** How many walks of the first and of the second group tell of it. */
  readonly walks: readonly [number, number];
  /** The time of the second over that of the first, by the means of ln minutes. */
  readonly ratio: number;
  /** The probability of so large a difference where there is none, and the same adjusted for how many steps are tested. */
  readonly p: number;
  readonly adjusted: number;
  /** True when the adjusted probability is at most 0.05. Where it is false, none is shown. */
  readonly isShown: boolean;
}

const LEVEL = 0.05;

/** Returns the steps of which both groups have at least two walks, each with its difference. What was broken off is left out. */
export function groupDifferences(
  steps: readonly ComparedStep[],
  second: ReadonlySet<WalkId>,
): readonly GroupDifference[] {
  const tested = steps.flatMap(({ entry, observations }) => {
    const done = observations.filter(({ isBrokenOff }) => !isBrokenOff);
    const a = done.flatMap(({ walk, y }) => (second.has(walk) ? [] : [y]));
    const b = done.flatMap(({ walk, y }) => (second.has(walk) ? [y] : []));
    const found = welch(a, b);
    return found ? [{ entry, walks: [a.length, b.length] as const, found }] : [];
  });
  const adjusted = holm(tested.map(({ found }) => found.p));
  return tested.map(({ entry, walks, found }, at): GroupDifference => {
    const own = adjusted[at] ?? 1;
    return {
      entry,
      walks,
      ratio: Math.exp(found.difference),
      p: found.p,
      adjusted: own,
      isShown: own <= LEVEL,
    };
  });
}
