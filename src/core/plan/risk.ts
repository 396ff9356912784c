import { quantile } from "d3-array";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import type { StepId } from "../units/index.ts";
import type { Span } from "../window/index.ts";
import { QUANTILE_CELLS } from "./pert-quantiles.ts";
import type { RiskModel } from "./risk-model.ts";

/** The result of sampling a plan ([PLN5]). Times are PET in ms. */
export interface Risk {
  readonly samples: number;
  readonly seed: number;
  /** The mean finish of the samples that finish; `null` when none does. */
  readonly mean: number | null;
  /**
   * The standard deviation of the finish, with n − 1 in the denominator; `null` when fewer than two samples finish.
   */
  readonly sd: number | null;
  readonly p10: number | null;
  readonly p50: number | null;
  readonly p90: number | null;
  /** The share of samples that finish within the elapsed limit; `null` without a limit. */
  readonly withinLimit: number | null;
  /** The share of samples in which some step does not fit any remaining span. */
  readonly unfit: number;
  /** The share of the samples that finish in which each step is on the critical path as traced in [PLN2]. */
  readonly criticality: ReadonlyMap<StepId, number>;
  /** The rank correlation (Spearman 1904) of the duration of each step with the finish; zero for fixed durations. */
  readonly influence: ReadonlyMap<StepId, number>;
}

/** Rank correlations use this many samples, taken from the first. */
const RANKED = 1000;

/** The first draws of generators with small seeds are similar, so this many draws are discarded. */
const WARM_UP = 64;

const UNIFORM = 2 ** -32;

/** Samples a model. The same seed gives the same figures. */
export function sampleRisk(model: RiskModel, samples: number, seed: number): Risk {
  const { order, firstLink, linkFrom, linkLag, within, earliest, leastFinish, ended } = model;
  const count = order.length;
  const generator = xoroshiro128plus(seed);
  for (let draw = 0; draw < WARM_UP; draw += 1) generator.next();

  const finish = Float64Array.from(ended);
  const open = Int32Array.from(order.keys()).filter((at) => Number.isNaN(ended[at]));
  const lengths = Float64Array.from(model.low);
  const binding = new Int32Array(count).fill(-1);
  const finishes = new Float64Array(samples);
  const onPath = new Uint32Array(count);
  const ranked = Math.min(samples, RANKED);
  const drawn = new Float64Array(count * ranked);
  const [begin, beginLast] = lastOf(finish, order);
  let complete = 0;

  for (let sample = 0; sample < samples; sample += 1) {
    drawLengths(model, open, generator, lengths);
    if (sample < ranked) for (const at of open) drawn[at * ranked + sample] = lengths[at] as number;
    let end = begin;
    let last = beginLast;
    let isUnfit = false;
    for (let place = 0; place < open.length; place += 1) {
      const at = open[place] as number;
      let start = earliest[at] as number;
      // When no predecessor delays the start, the critical path begins at this step.
      let bound = -1;
      const to = firstLink[at + 1] as number;
      for (let link = firstLink[at] as number; link < to; link += 1) {
        const before = linkFrom[link] as number;
        const lets = (finish[before] as number) + (linkLag[link] as number);
        if (lets > start) {
          start = lets;
          bound = before;
        }
      }
      const windows = within[at];
      if (windows) {
        const fit = firstFit(start, lengths[at] as number, windows);
        if (fit === Number.POSITIVE_INFINITY) {
          isUnfit = true;
          break;
        }
        if (fit > start) {
          start = fit;
          bound = -1;
        }
      }
      const done = Math.max(leastFinish[at] as number, start + (lengths[at] as number));
      binding[at] = bound;
      finish[at] = done;
      if (done > end || last === -1 || (done === end && (order[at] as number) < (order[last] as number))) {
        end = done;
        last = at;
      }
    }
    if (isUnfit) continue;
    finishes[complete] = end;
    complete += 1;
    for (let at = last; at >= 0; at = binding[at] as number) onPath[at] = (onPath[at] as number) + 1;
  }
  return summary(model, { samples, seed, finishes: finishes.subarray(0, complete), onPath, drawn, ranked });
}

/**
 * Returns the latest known finish and its position. The first step in reading order wins a tie. Returns 0 and -1 when
 * no finish is known.
 */
function lastOf(finish: Float64Array, order: Int32Array): [number, number] {
  let [end, last] = [0, -1];
  for (const [at, done] of finish.entries()) {
    const isLater = done > end || (done === end && (last === -1 || (order[at] ?? 0) < (order[last] ?? 0)));
    if (isLater) [end, last] = [done, at];
  }
  return [end, last];
}

/** Draws a duration in ms for every open position whose duration is not fixed, and writes it to `lengths`. */
function drawLengths(
  model: RiskModel,
  open: Int32Array,
  generator: { next(): number },
  lengths: Float64Array,
): void {
  const { low, width, table, tables, floor, alpha } = model;
  const cells = QUANTILE_CELLS;
  for (let place = 0; place < open.length; place += 1) {
    const at = open[place] as number;
    const first = table[at] as number;
    if (first < 0) continue;
    const least = floor[at] as number;
    const share = least + (1 - least) * ((generator.next() >>> 0) * UNIFORM);
    const cell = share * cells;
    const whole = Math.min(cell | 0, cells - 1);
    const from = tables[first + whole] as number;
    const to = tables[first + whole + 1] as number;
    let quantile = from + (cell - whole) * (to - from);
    // In the first and the last cell the quantile is a power of the probability; linear interpolation would move
    // draws towards the ends.
    if (whole === 0) quantile = to * cell ** (1 / (alpha[at] as number));
    else if (whole === cells - 1) {
      quantile = 1 - (1 - from) * (cells - cell) ** (1 / (6 - (alpha[at] as number)));
    }
    lengths[at] = (low[at] as number) + (width[at] as number) * quantile;
  }
}

/**
 * Returns the earliest start at or after `ready` for which the whole step is inside one span of every window, or
 * infinity when there is none.
 */
function firstFit(ready: number, length: number, windows: readonly (readonly Span[])[]): number {
  let start = ready;
  for (let moved = true; moved; ) {
    moved = false;
    for (const spans of windows) {
      let best = Number.POSITIVE_INFINITY;
      // Spans are sorted by start, so the first span that fits gives the earliest start.
      for (let span = 0; span < spans.length; span += 1) {
        const { from, to } = spans[span] as Span;
        const at = from > start ? from : start;
        if (at + length <= to) {
          best = at;
          break;
        }
      }
      if (best === Number.POSITIVE_INFINITY) return best;
      if (best > start) {
        start = best;
        moved = true;
      }
    }
  }
  return start;
}

interface Tally {
  readonly samples: number;
  readonly seed: number;
  /** The finishes of the samples that finish. */
  readonly finishes: Float64Array;
  readonly onPath: Uint32Array;
  readonly drawn: Float64Array;
  readonly ranked: number;
}

function summary(model: RiskModel, { samples, seed, finishes, onPath, drawn, ranked }: Tally): Risk {
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
    p10: quantileOf(sorted, 0.1),
    p50: quantileOf(sorted, 0.5),
    p90: quantileOf(sorted, 0.9),
    withinLimit:
      limit === null ? null : finishes.reduce((sum, value) => sum + (value <= limit ? 1 : 0), 0) / samples,
    unfit: (samples - complete) / samples,
    criticality,
    influence,
  };
}

/**
 * Returns a quantile of sorted values, interpolated linearly (Hyndman & Fan 1996, type 7), or `null` when there are
 * no values.
 */
const quantileOf = (values: Float64Array, share: number) => quantile(values, share) ?? null;

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
