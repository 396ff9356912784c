import type { StepId, WindowId } from "../units/index.ts";
import type { Span } from "../window/index.ts";
import { QUANTILE_CELLS } from "./pert-quantiles.ts";
import type { RiskModel } from "./risk-model.ts";
import type { Risk } from "./risk-summary.ts";
import { riskOf } from "./risk-summary.ts";
import type { SampledBound } from "./sampled-bounds.ts";
import { isBroken } from "./sampled-bounds.ts";
import type { Stream } from "./step-stream.ts";
import { streamOf, uniformOf } from "./step-stream.ts";

/** Rank correlations use this many samples, taken from the first. */
const RANKED = 1000;

/** What of the figures is wanted. */
export interface Wanted {
  /** False to leave the rank correlations at zero, which take most of the time when there are few samples. */
  readonly influence: boolean;
}

/**
 * Samples a model. The same seed gives the same figures. Each step has a stream of draws of its own, which hangs on the
 * seed and its id: it lasts equally long in the same sample of another plan, so that two plans differ by what was
 * changed and not by the draws (common random numbers; Law, Simulation Modeling and Analysis, ch. 11).
 */
export function sampleRisk(
  model: RiskModel,
  samples: number,
  seed: number,
  { influence }: Wanted = { influence: true },
): Risk {
  const { order, firstLink, linkFrom, linkLag, within, earliest, leastFinish, ended } = model;
  const count = order.length;
  const finish = Float64Array.from(ended);
  const open = Int32Array.from(order.keys()).filter((at) => Number.isNaN(ended[at]));
  const streams = Array.from(open, (at) => streamOf(model.steps[at] as StepId, seed));
  const starts = new Float64Array(count);
  const lengths = Float64Array.from(model.low);
  const binding = new Int32Array(count).fill(-1);
  const finishes = new Float64Array(samples);
  const onPath = new Uint32Array(count);
  const ranked = influence ? Math.min(samples, RANKED) : 0;
  const drawn = new Float64Array(count * ranked);
  const [begin, beginLast] = lastOf(finish, order);
  let complete = 0;
  const broken = new Uint32Array(model.bounds.length);
  const missedSteps = new Map<StepId, number>();
  const missedWindows = new Map<WindowId, { sample: number; count: number }>();
  let sample = 0;
  const missed = (at: number, start: number) => {
    const step = model.steps[at] as StepId;
    missedSteps.set(step, (missedSteps.get(step) ?? 0) + 1);
    const [lists, ids] = [within[at] ?? [], model.withinIds[at] ?? []];
    const alone = ids.filter(
      (_, place) => firstFit(start, lengths[at] as number, [lists[place] ?? []]) === Number.POSITIVE_INFINITY,
    );
    for (const id of alone.length > 0 ? alone : ids) {
      const known = missedWindows.get(id) ?? { sample: -1, count: 0 };
      if (known.sample !== sample) missedWindows.set(id, { sample, count: known.count + 1 });
    }
  };

  for (sample = 0; sample < samples; sample += 1) {
    drawLengths(model, open, streams, lengths);
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
          if (start < fit) missed(at, start);
        }
        if (fit > start) {
          start = fit;
          bound = -1;
        }
      }
      const done = Math.max(leastFinish[at] as number, start + (lengths[at] as number));
      binding[at] = bound;
      starts[at] = start;
      finish[at] = done;
      if (done > end || last === -1 || (done === end && (order[at] as number) < (order[last] as number))) {
        end = done;
        last = at;
      }
    }
    for (let at = 0; at < broken.length; at += 1)
      if (isBroken(model.bounds[at] as SampledBound, starts, finish)) broken[at] = (broken[at] as number) + 1;
    if (isUnfit) continue;
    finishes[complete] = end;
    complete += 1;
    for (let at = last; at >= 0; at = binding[at] as number) onPath[at] = (onPath[at] as number) + 1;
  }
  const share = (count: number) => count / samples;
  return riskOf(model, {
    samples,
    seed,
    finishes: finishes.subarray(0, complete),
    onPath,
    drawn,
    ranked,
    broken: model.bounds.flatMap(({ bound }, at) => {
      const times = broken[at] as number;
      return times > 0 ? [{ bound, share: share(times) }] : [];
    }),
    missed: {
      steps: new Map([...missedSteps].map(([step, count]) => [step, share(count)])),
      windows: new Map([...missedWindows].map(([window, { count }]) => [window, share(count)])),
    },
  });
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
  streams: readonly Stream[],
  lengths: Float64Array,
): void {
  const { low, width, table, tables, floor, alpha } = model;
  const cells = QUANTILE_CELLS;
  for (let place = 0; place < open.length; place += 1) {
    const at = open[place] as number;
    const first = table[at] as number;
    if (first < 0) continue;
    const least = floor[at] as number;
    const share = least + (1 - least) * uniformOf(streams[place] as Stream);
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
