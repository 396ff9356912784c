import type { StepId, WindowId } from "../units/index.ts";
import type { RiskModel } from "./risk-model.ts";
import type { BrokenBound } from "./sampled-bounds.ts";

/** The result of sampling a plan ([PLN5]). Times are PET in ms. */
export interface Risk {
  readonly samples: number;
  readonly seed: number;
  /** The mean finish of the samples that fit their windows; `null` when none does. */
  readonly mean: number | null;
  /**
   * The standard deviation of those finishes, with n − 1 in the denominator; `null` when fewer than two samples fit.
   */
  readonly sd: number | null;
  /**
   * The PETs by which 10, 50 and 90 % of all samples finish. A sample that fits no window finishes after every limit, so
   * that a percentile among those is `null`.
   */
  readonly p10: number | null;
  readonly p50: number | null;
  readonly p90: number | null;
  /** The finishes of the samples that fit their windows, in rising order. */
  readonly finishes: Float64Array;
  /** The share of samples that finish within the elapsed limit; `null` without a limit. */
  readonly withinLimit: number | null;
  /** The share of samples in which some step does not fit any remaining span. */
  readonly unfit: number;
  /** What is missed in those samples. */
  readonly missed: Missed;
  /** The bounds of [PRO17] that some samples break, in reading order. */
  readonly broken: readonly BrokenBound[];
  /** The share of the samples that finish in which each step is on the critical path as traced in [PLN2]. */
  readonly criticality: ReadonlyMap<StepId, number>;
  /** The rank correlation (Spearman 1904) of the duration of each step with the finish; zero for fixed durations. */
  readonly influence: ReadonlyMap<StepId, number>;
}

/** The shares of samples in which a step does not fit its windows any more, though all before it did; none at zero. */
export interface Missed {
  /** By the step that does not fit. */
  readonly steps: ReadonlyMap<StepId, number>;
  /** By window: one in which a step alone does not fit any more, or each of its windows when only all together do not. */
  readonly windows: ReadonlyMap<WindowId, number>;
}

/** What was counted while a model was sampled. */
export interface Tally {
  readonly samples: number;
  readonly seed: number;
  /** The finishes of the samples that finish. */
  readonly finishes: Float64Array;
  readonly onPath: Uint32Array;
  readonly drawn: Float64Array;
  readonly ranked: number;
  readonly missed: Missed;
  readonly broken: readonly BrokenBound[];
}

/** Returns the figures of [PLN5] from what was counted. */
export function riskOf(
  model: RiskModel,
  { samples, seed, finishes, onPath, drawn, ranked, missed, broken }: Tally,
): Risk {
  const complete = finishes.length;
  const mean = complete > 0 ? finishes.reduce((sum, value) => sum + value, 0) / complete : null;
  const squares = mean === null ? 0 : finishes.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  const sorted = finishes.slice().sort();
  const { limit } = model;
  const criticality = new Map<StepId, number>();
  const influence = new Map<StepId, number>();
  // Samples without a finish are missing from the finishes, so durations and finishes only correspond when every
  // sample finishes.
  const ranks = complete === samples && ranked > 1 ? ranksOf(finishes.subarray(0, ranked)) : null;
  for (const [at, step] of model.steps.entries()) {
    criticality.set(step, complete > 0 ? (onPath[at] ?? 0) / complete : 0);
    const counts = ranks && (model.table[at] ?? -1) >= 0 && Number.isNaN(model.ended[at]);
    const lengths = drawn.subarray(at * ranked, (at + 1) * ranked);
    influence.set(step, counts ? correlation(ranksOf(lengths), ranks) : 0);
  }
  return {
    samples,
    seed,
    mean,
    sd: complete > 1 ? Math.sqrt(squares / (complete - 1)) : null,
    p10: quantileOf(sorted, samples, 0.1),
    p50: quantileOf(sorted, samples, 0.5),
    p90: quantileOf(sorted, samples, 0.9),
    finishes: sorted,
    withinLimit:
      limit === null ? null : finishes.reduce((sum, value) => sum + (value <= limit ? 1 : 0), 0) / samples,
    unfit: (samples - complete) / samples,
    missed,
    broken,
    criticality,
    influence,
  };
}

/**
 * Returns a quantile of so many values, of which the least are given in order and the others lie beyond every limit;
 * interpolated linearly (Hyndman & Fan 1996, type 7). `null` when it lies among the others.
 */
function quantileOf(sorted: Float64Array, count: number, share: number): number | null {
  const place = (count - 1) * share;
  const [low, high] = [Math.floor(place), Math.ceil(place)];
  const [from, to] = [sorted[low], sorted[high]];
  return from === undefined || to === undefined ? null : from + (place - low) * (to - from);
}

/**
 * Returns the rank of each value, counted from 0. Equal values share the mean of their ranks; they occur when a
 * window delays several finishes to the same time.
 */
function ranksOf(values: Float64Array): Float64Array {
  const sorted = values.slice().sort();
  return values.map((value) => {
    let [low, high] = [0, sorted.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((sorted[middle] as number) < value) low = middle + 1;
      else high = middle;
    }
    if (sorted[low + 1] !== value) return low;
    let end = sorted.length;
    while (high < end) {
      const middle = (high + end) >> 1;
      if ((sorted[middle] as number) > value) end = middle;
      else high = middle + 1;
    }
    return (low + end - 1) / 2;
  });
}

/** Returns Pearson's correlation of two rankings, each of which has the mean (n − 1)/2. */
function correlation(a: Float64Array, b: Float64Array): number {
  const mean = (a.length - 1) / 2;
  let [both, squaresA, squaresB] = [0, 0, 0];
  for (let index = 0; index < a.length; index += 1) {
    const [x, y] = [(a[index] ?? 0) - mean, (b[index] ?? 0) - mean];
    both += x * y;
    squaresA += x * x;
    squaresB += y * y;
  }
  return squaresA > 0 && squaresB > 0 ? both / Math.sqrt(squaresA * squaresB) : 0;
}
