import type { StepId } from "../units/index.ts";
import type { Span } from "../window/index.ts";
import type { RiskModel } from "./risk-model.ts";
import { drawDurations } from "./step-draws.ts";
import type { Stream } from "./step-stream.ts";
import { streamOf } from "./step-stream.ts";

/** So many samples are worked out at a time: their times then stay in the processor's cache, whatever the steps do. */
const BLOCK = 128;

/** A step that fits none of its windows any more in a sample of a block, though all before it did. */
export interface BlockMiss {
  /** Which sample of the block it is, from 0. */
  readonly sample: number;
  readonly at: number;
  /** When the step would have been let start. */
  readonly ready: number;
  readonly length: number;
}

/**
 * Some samples of a model at once. Steps are taken one after another, and each for all samples of the block, so that what
 * is known of a step is looked up once. Rows are positions of the model, {@link rowOf} says where one begins.
 */
export class SampleBlock {
  readonly starts: Float64Array;
  readonly finishes: Float64Array;
  readonly lengths: Float64Array;
  /** The position that lets each step start last; -1 where none does. */
  readonly binding: Int32Array;
  /** When each sample ends, and the position that ends it. */
  readonly ends = new Float64Array(BLOCK);
  readonly lasts = new Int32Array(BLOCK);
  /** 1 for a sample in which some step fits no window. */
  readonly unfit = new Uint8Array(BLOCK);
  /** In the order of samples, and within a sample in that of the steps. */
  misses: readonly BlockMiss[] = [];
  readonly #model: RiskModel;
  /** The positions that are not complete yet, with their streams of draws. */
  readonly #open: readonly { readonly at: number; readonly stream: Stream }[];
  readonly #end: number;
  readonly #last: number;
  readonly #draws: readonly (Float64Array | null)[] | null;
  /** The number of the first sample of the block. */
  #first = 0;
  #count = 0;

  /** `draws` has the draws of all samples where they are kept, by position. */
  constructor(model: RiskModel, seed: number, draws: readonly (Float64Array | null)[] | null) {
    const { order, ended, low } = model;
    const size = order.length * BLOCK;
    this.#model = model;
    this.#draws = draws;
    this.starts = new Float64Array(size);
    this.finishes = new Float64Array(size);
    this.lengths = new Float64Array(size);
    this.binding = new Int32Array(size).fill(-1);
    const open: { at: number; stream: Stream }[] = [];
    for (let at = 0; at < order.length; at += 1) {
      const [row, finish] = [at * BLOCK, ended[at] as number];
      this.lengths.fill(low[at] as number, row, row + BLOCK);
      this.finishes.fill(finish, row, row + BLOCK);
      if (Number.isNaN(finish)) open.push({ at, stream: streamOf(model.steps[at] as StepId, seed) });
    }
    this.#open = open;
    [this.#end, this.#last] = lastOf(ended, order);
  }

  /** Works out the next samples; returns how many they are, `most` at the most. */
  next(most: number): number {
    const count = Math.min(BLOCK, most);
    this.#first += this.#count;
    this.#count = count;
    this.ends.fill(this.#end);
    this.lasts.fill(this.#last);
    this.unfit.fill(0);
    const missed: BlockMiss[] = [];
    for (const { at, stream } of this.#open) {
      this.#draw(at, stream, count);
      this.#begin(at, count);
      if (this.#model.within[at]) this.#fit(at, count, missed);
      this.#finish(at, count);
    }
    this.misses = missed.sort((a, b) => a.sample - b.sample);
    return count;
  }

  /** Where the samples of a position begin. */
  rowOf(at: number): number {
    return at * BLOCK;
  }

  /** Counts for each position in how many of the samples that fit it lies on the critical path. */
  countPaths(onPath: Uint32Array, count: number): void {
    const { binding } = this;
    const next = this.lasts.slice(0, count);
    for (let sample = 0; sample < count; sample += 1) if (this.unfit[sample] === 1) next[sample] = -1;
    // What binds a position comes before it, so that one pass from the end goes along every path, row by row.
    for (let at = onPath.length - 1; at >= 0; at -= 1) {
      const row = at * BLOCK;
      let times = 0;
      for (let sample = 0; sample < count; sample += 1) {
        if (next[sample] !== at) continue;
        times += 1;
        next[sample] = binding[row + sample] as number;
      }
      onPath[at] = (onPath[at] as number) + times;
    }
  }

  #draw(at: number, stream: Stream, count: number): void {
    if ((this.#model.table[at] as number) < 0) return;
    const kept = this.#draws?.[at];
    const row = at * BLOCK;
    if (kept) this.lengths.set(kept.subarray(this.#first, this.#first + count), row);
    else drawDurations(this.#model, at, stream, this.lengths.subarray(row, row + count));
  }

  /** Lets a position start when its predecessors do. When none delays it, the critical path begins at it. */
  #begin(at: number, count: number): void {
    const { starts, finishes, binding } = this;
    const { firstLink, linkFrom, linkLag, earliest } = this.#model;
    const row = at * BLOCK;
    starts.fill(earliest[at] as number, row, row + count);
    binding.fill(-1, row, row + count);
    const to = firstLink[at + 1] as number;
    for (let link = firstLink[at] as number; link < to; link += 1) {
      const before = linkFrom[link] as number;
      const lag = linkLag[link] as number;
      const from = before * BLOCK;
      for (let sample = 0; sample < count; sample += 1) {
        const lets = (finishes[from + sample] as number) + lag;
        if (lets > (starts[row + sample] as number)) {
          starts[row + sample] = lets;
          binding[row + sample] = before;
        }
      }
    }
  }

  /** Puts a position off until it fits its windows. */
  #fit(at: number, count: number, missed: BlockMiss[]): void {
    const { starts, lengths, binding, unfit } = this;
    const windows = this.#model.within[at] ?? [];
    const row = at * BLOCK;
    for (let sample = 0; sample < count; sample += 1) {
      const ready = starts[row + sample] as number;
      const length = lengths[row + sample] as number;
      const fit = firstFit(ready, length, windows);
      if (fit === Number.POSITIVE_INFINITY) {
        unfit[sample] = 1;
        if (ready < fit) missed.push({ sample, at, ready, length });
      }
      if (fit > ready) {
        starts[row + sample] = fit;
        binding[row + sample] = -1;
      }
    }
  }

  #finish(at: number, count: number): void {
    const { starts, finishes, lengths, ends, lasts } = this;
    const { order, leastFinish } = this.#model;
    const least = leastFinish[at] as number;
    const row = at * BLOCK;
    for (let sample = 0; sample < count; sample += 1) {
      const done = Math.max(least, (starts[row + sample] as number) + (lengths[row + sample] as number));
      finishes[row + sample] = done;
      const end = ends[sample] as number;
      const last = lasts[sample] as number;
      // The first step in reading order wins a tie.
      if (done > end || last === -1 || (done === end && (order[at] as number) < (order[last] as number))) {
        ends[sample] = done;
        lasts[sample] = at;
      }
    }
  }
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

/**
 * Returns the earliest start at or after `ready` for which the whole step is inside one span of every window, or
 * infinity when there is none.
 */
export function firstFit(ready: number, length: number, windows: readonly (readonly Span[])[]): number {
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
