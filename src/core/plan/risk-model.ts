import type { Course } from "../course/index.ts";
import type { StepId, WindowId } from "../units/index.ts";
import type { Span } from "../window/index.ts";
import { pertQuantiles, probabilityBelow, QUANTILE_CELLS } from "./pert-quantiles.ts";
import type { SampledBound } from "./sampled-bounds.ts";
import { sampledBounds } from "./sampled-bounds.ts";
import { notBeforeOf } from "./time-bounds.ts";

/**
 * A course prepared for sampling. It has only plain and typed arrays, so that it can be sent to a worker. Positions
 * are indices into `steps`, in which every step comes after its predecessors. Times are in ms.
 */
export interface RiskModel {
  readonly steps: readonly StepId[];
  /** The reading-order index of each position, which breaks ties. */
  readonly order: Int32Array;
  /**
   * The links to position p are in the half-open range [`firstLink[p]`, `firstLink[p + 1]`), sorted by the reading
   * order of the steps they come from.
   */
  readonly firstLink: Int32Array;
  readonly linkFrom: Int32Array;
  readonly linkLag: Float64Array;
  /** `low` is the shortest duration; `width` is the longest duration − the shortest. */
  readonly low: Float64Array;
  readonly width: Float64Array;
  /** The first parameter of the beta distribution; the second is 6 − alpha. */
  readonly alpha: Float64Array;
  /** The index in `tables` where the quantiles of a position begin; -1 when its duration is fixed. */
  readonly table: Int32Array;
  readonly tables: Float64Array;
  /**
   * Draws are uniform on [floor, 1). The floor is above zero for a step in work that has already lasted longer than
   * its shortest duration ([FOR2]).
   */
  readonly floor: Float64Array;
  /** The earliest possible start: now, or the actual start of a step in work, whose links are left out. */
  readonly earliest: Float64Array;
  /** The earliest possible finish, which is now for a step in work. */
  readonly leastFinish: Float64Array;
  /** The finish of a complete step; NaN for all other steps. */
  readonly ended: Float64Array;
  /** For each position, the spans of each window that the step must be in; `null` when it has no known window. */
  readonly within: readonly (readonly (readonly Span[])[] | null)[];
  /** For each position, the ids of the windows in `within`, in the same order. */
  readonly withinIds: readonly (readonly WindowId[])[];
  /** The bounds of [PRO17] that the samples are held against. */
  readonly bounds: readonly SampledBound[];
  readonly limit: number | null;
}

/**
 * The input for sampling: a network with its durations and windows, and optionally the progress of its steps. Without
 * `steps`, nothing has started.
 */
export type Sampled = Pick<Course, "network" | "whereabouts" | "windows"> &
  Partial<Pick<Course, "steps" | "now">>;

/**
 * Prepares a plan or a course for sampling ([PLN5], [FOR2]). Complete steps keep their times, steps in work have
 * lasted since their start, and no other step starts before `now`. The network must have no deadlock.
 */
export function riskModelOf({ network, whereabouts, windows, now, steps }: Sampled): RiskModel {
  const { order, before, outline } = network;
  const idOf = (index: number) => outline.steps[index]?.step.id as StepId;
  const count = order.length;
  const positionOf = new Int32Array(outline.steps.length).fill(-1);
  for (const [position, index] of order.entries()) positionOf[index] = position;
  const links = order.map((index) => before[index] ?? []);
  const total = links.reduce((sum, { length }) => sum + length, 0);
  const begun = (index: number) => {
    const step = steps?.get(idOf(index));
    return step === undefined || step.stage === "planned" ? null : step;
  };
  const model = {
    steps: order.map(idOf),
    order: Int32Array.from(order),
    firstLink: new Int32Array(count + 1),
    linkFrom: new Int32Array(total),
    linkLag: new Float64Array(total),
    low: new Float64Array(count),
    width: new Float64Array(count),
    table: new Int32Array(count).fill(-1),
    floor: new Float64Array(count),
    earliest: Float64Array.from(order, (index) => {
      const entry = outline.steps[index];
      return Math.max(now ?? 0, entry ? notBeforeOf(entry) : 0);
    }),
    leastFinish: new Float64Array(count),
    ended: new Float64Array(count).fill(Number.NaN),
    alpha: new Float64Array(count).fill(1),
    bounds: sampledBounds(steps ? { network, steps } : { network }, positionOf),
    limit: outline.procedure.limits.elapsed ?? null,
  };
  const tables: Float64Array[] = [];
  const tableOf = new Map<number, number>();
  let link = 0;
  for (const [position, index] of order.entries()) {
    const step = begun(index);
    model.firstLink[position] = link;
    if (!step)
      for (const { from, lag } of links[position] ?? []) {
        model.linkFrom[link] = positionOf[from] ?? -1;
        model.linkLag[link] = lag;
        link += 1;
      }
    const { low, likely, high } = whereabouts.times[index] ?? { low: 0, likely: 0, high: 0 };
    model.low[position] = low;
    model.width[position] = high - low;
    if (high > low) {
      const alpha = 1 + (4 * (likely - low)) / (high - low);
      model.alpha[position] = alpha;
      const known = tableOf.get(alpha) ?? tables.length;
      if (!tableOf.has(alpha)) {
        tableOf.set(alpha, known);
        tables.push(pertQuantiles(alpha));
      }
      model.table[position] = known * (QUANTILE_CELLS + 1);
    }
    if (!step) continue;
    if (step.stage !== "in-work") {
      model.ended[position] = step.finish;
      continue;
    }
    model.earliest[position] = step.start;
    model.leastFinish[position] = now ?? step.start;
    if (high > low) {
      const passed = ((now ?? step.start) - step.start - low) / (high - low);
      const quantiles = tables[(model.table[position] ?? 0) / (QUANTILE_CELLS + 1)];
      if (quantiles && passed > 0)
        model.floor[position] =
          passed >= 1 ? 1 : probabilityBelow(quantiles, model.alpha[position] ?? 1, passed);
    }
  }
  model.firstLink[count] = link;
  const joined = new Float64Array(tables.length * (QUANTILE_CELLS + 1));
  for (const [number, table] of tables.entries()) joined.set(table, number * (QUANTILE_CELLS + 1));
  const known = order.map((index) => {
    if (begun(index)) return [];
    return (outline.steps[index]?.step.within ?? []).flatMap((id) => {
      const spans = windows.get(id);
      return spans ? [{ id, spans }] : [];
    });
  });
  return {
    ...model,
    tables: joined,
    within: known.map((list) => (list.length > 0 ? list.map(({ spans }) => spans) : null)),
    withinIds: known.map((list) => list.map(({ id }) => id)),
  };
}
