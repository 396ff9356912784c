import type { ClusteredPoint } from "../statistics/index.ts";
import { commonSlope, theilSen } from "../statistics/index.ts";
import type { StepId, WalkId } from "../units/index.ts";
import type { Weighed } from "./weigh.ts";

/** How a rehearsal that is repeated becomes shorter or longer ([LRN5]). */
export interface LearningCurve {
  /** How many rehearsals there were, and steps that were done in at least two of them. */
  readonly walks: number;
  readonly steps: number;
  /** The slope of ln(minutes) on ln(repeat), the same for all steps; below zero when they become shorter. */
  readonly slope: number;
  readonly standardError: number;
  /** The slope by the median of all pairs, which a few walks that are off do not move. */
  readonly check: number;
  /** What a doubling of the repeats makes of a time: 0.8 for a fifth less. */
  readonly rate: number;
  /** True when there are enough walks and the slope is told from chance, both ways of working it out agreeing. */
  readonly isClaimed: boolean;
}

const ENOUGH_WALKS = 4;

/**
 * Returns the learning curve over the repeats of a rehearsal, by walk (Crawford 1944): the nth rehearsal in order of time is
 * repeat n. What was broken off is left out. `null` with fewer than two rehearsals that have a step in common.
 */
export function learningCurve(
  rehearsals: readonly WalkId[],
  steps: readonly { readonly step: StepId; readonly observations: readonly Weighed[] }[],
): LearningCurve | null {
  if (rehearsals.length < 2) return null;
  const repeatOf = new Map(rehearsals.map((walk, at) => [walk, Math.log(at + 1)]));
  const groups: ClusteredPoint[][] = [];
  for (const { observations } of steps) {
    const points: ClusteredPoint[] = [];
    for (const { walk, y, isBrokenOff } of observations) {
      const x = repeatOf.get(walk);
      if (x !== undefined && !isBrokenOff) points.push({ cluster: walk, x, y });
    }
    if (points.length > 1) groups.push(points);
  }
  const common = commonSlope(groups);
  const check = theilSen(groups);
  if (!common || check === null) return null;
  const walks = new Set(groups.flat().map(({ cluster }) => cluster)).size;
  const { slope, standardError } = common;
  return {
    walks,
    steps: groups.length,
    slope,
    standardError,
    check,
    rate: 2 ** slope,
    isClaimed:
      walks >= ENOUGH_WALKS && Math.abs(slope) > 2 * standardError && Math.sign(check) === Math.sign(slope),
  };
}
