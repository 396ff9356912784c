import type { StepId, WindowId } from "../units/index.ts";
import type { RiskModel } from "./risk-model.ts";
import type { Missed, Risk } from "./risk-summary.ts";
import { riskOf } from "./risk-summary.ts";
import type { BlockMiss } from "./sample-block.ts";
import { firstFit, SampleBlock } from "./sample-block.ts";
import type { SampledBound } from "./sampled-bounds.ts";
import { isBroken } from "./sampled-bounds.ts";
import type { KeptDraws } from "./step-draws.ts";

/** Rank correlations use this many samples, taken from the first. */
const RANKED = 1000;

/** What of the figures is wanted. */
export interface Wanted {
  /** False to leave the rank correlations at zero, which take most of the time when there are few samples. */
  readonly influence: boolean;
  /** What keeps the draws from one sampling to the next; without it all are drawn. */
  readonly draws?: KeptDraws;
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
  { influence, draws }: Wanted = { influence: true },
): Risk {
  const count = model.order.length;
  const block = new SampleBlock(model, seed, draws?.of(model, samples, seed) ?? null);
  const finishes = new Float64Array(samples);
  const onPath = new Uint32Array(count);
  const ranked = influence ? Math.min(samples, RANKED) : 0;
  const drawn = new Float64Array(count * ranked);
  const broken = new Uint32Array(model.bounds.length);
  const misses = new Misses(model);
  let complete = 0;
  for (let first = 0; first < samples; ) {
    const size = block.next(samples - first);
    const kept = Math.min(size, ranked - first);
    for (let at = 0; at < count && kept > 0; at += 1) {
      const row = block.rowOf(at);
      drawn.set(block.lengths.subarray(row, row + kept), at * ranked + first);
    }
    for (const one of block.misses) misses.add(first, one);
    for (let at = 0; at < broken.length; at += 1) {
      for (let sample = 0; sample < size; sample += 1)
        if (isBroken(model.bounds[at] as SampledBound, block, sample))
          broken[at] = (broken[at] as number) + 1;
    }
    for (let sample = 0; sample < size; sample += 1) {
      if (block.unfit[sample] === 1) continue;
      finishes[complete] = block.ends[sample] as number;
      complete += 1;
    }
    block.countPaths(onPath, size);
    first += size;
  }
  return riskOf(model, {
    samples,
    seed,
    finishes: finishes.subarray(0, complete),
    onPath,
    drawn,
    ranked,
    broken: model.bounds.flatMap(({ bound }, at) => {
      const times = broken[at] as number;
      return times > 0 ? [{ bound, share: times / samples }] : [];
    }),
    missed: misses.shares(samples),
  });
}

/** Counts in how many samples steps and windows are missed. */
class Misses {
  readonly #model: RiskModel;
  readonly #steps = new Map<StepId, number>();
  readonly #windows = new Map<WindowId, { sample: number; count: number }>();

  constructor(model: RiskModel) {
    this.#model = model;
  }

  /** Counts a step that fits no window in a sample; `first` is the number of the first sample of its block. */
  add(first: number, { sample, at, ready, length }: BlockMiss): void {
    const step = this.#model.steps[at] as StepId;
    this.#steps.set(step, (this.#steps.get(step) ?? 0) + 1);
    const [lists, ids] = [this.#model.within[at] ?? [], this.#model.withinIds[at] ?? []];
    const alone = ids.filter(
      (_, place) => firstFit(ready, length, [lists[place] ?? []]) === Number.POSITIVE_INFINITY,
    );
    for (const id of alone.length > 0 ? alone : ids) {
      const known = this.#windows.get(id) ?? { sample: -1, count: 0 };
      if (known.sample !== first + sample)
        this.#windows.set(id, { sample: first + sample, count: known.count + 1 });
    }
  }

  /** The shares of so many samples. */
  shares(samples: number): Missed {
    return {
      steps: new Map([...this.#steps].map(([step, count]) => [step, count / samples])),
      windows: new Map([...this.#windows].map(([window, { count }]) => [window, count / samples])),
    };
  }
}
