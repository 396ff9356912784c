import type { Network } from "./network.ts";

/**
 * Which steps come before which in a network, through any number of precedences ([ORD2]). Steps are reading order
 * indices.
 */
export interface HappensBefore {
  readonly network: Network;
  /** True when `a` must be complete before `b` starts. Always false when `a` and `b` are the same step. */
  before(a: number, b: number): boolean;
  /** True for two different steps neither of which happens before the other. */
  concurrent(a: number, b: number): boolean;
  /**
   * The vector clock of a step: for each lane, the number of its steps that happen before this one, counting this one
   * itself. `null` for a step that is not performed, or that is part of a deadlock or comes after one.
   */
  clock(step: number): readonly number[] | null;
}

/**
 * Computes happens-before with one vector clock for each step (Fidge 1988, Mattern 1989). The lanes are the processes:
 * each lane is a chain, so a step happens before another exactly when the other's clock has counted it. A joint step
 * counts in the lane of each performer. The cost is proportional to (steps + precedences) × lanes. A step without a
 * clock is neither before, after nor concurrent with any other.
 */
export function happensBefore(network: Network): HappensBefore {
  const { outline, lanes, order } = network;
  const width = lanes.length;
  const clocks = new Int32Array(outline.steps.length * width);
  const laneOf = new Int32Array(outline.steps.length).fill(-1);
  const countOf = new Int32Array(outline.steps.length);
  for (const [lane, indices] of lanes.entries()) {
    for (const [position, index] of indices.entries()) {
      laneOf[index] = lane;
      countOf[index] = position + 1;
    }
  }
  const hasClock = new Uint8Array(outline.steps.length);
  const reached = new Int32Array(width);
  for (const index of order) {
    const row = index * width;
    for (const { from } of network.before[index] ?? []) {
      for (let lane = 0; lane < width; lane += 1) {
        const seen = clocks[from * width + lane] ?? 0;
        if (seen > (clocks[row + lane] ?? 0)) clocks[row + lane] = seen;
      }
    }
    for (const lane of outline.steps[index]?.performers ?? []) {
      const count = (reached[lane] ?? 0) + 1;
      reached[lane] = count;
      clocks[row + lane] = count;
    }
    hasClock[index] = 1;
  }
  const known = (index: number) => hasClock[index] === 1;
  const before = (a: number, b: number) =>
    a !== b &&
    known(a) &&
    known(b) &&
    (clocks[b * width + (laneOf[a] ?? 0)] ?? 0) >= (countOf[a] ?? Number.POSITIVE_INFINITY);
  return {
    network,
    before,
    concurrent: (a, b) => a !== b && known(a) && known(b) && !before(a, b) && !before(b, a),
    clock: (step) => (known(step) ? [...clocks.subarray(step * width, (step + 1) * width)] : null),
  };
}
