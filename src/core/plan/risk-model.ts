import type { Course } from "../course/index.ts";
import type { StepId } from "../units/index.ts";
import type { Span } from "../window/index.ts";
import { pertQuantiles, probabilityBelow, QUANTILE_CELLS } from "./pert-quantiles.ts";

/**
 * A course ready for sampling: plain arrays and typed arrays only, so that it can be handed to a worker. Positions are those
 * of `steps`, an order in which every step stands behind its predecessors; times are in ms.
 */
export interface RiskModel {
  readonly steps: readonly StepId[];
  /** The place of each position in reading order, which settles ties. */
  readonly order: Int32Array;
  /** Links to position p are those from `firstLink[p]` to before `firstLink[p + 1]`, in reading order of their start. */
  readonly firstLink: Int32Array;
  readonly linkFrom: Int32Array;
  readonly linkLag: Float64Array;
  /** Shortest duration, and by how much the longest is longer. */
  readonly low: Float64Array;
  readonly width: Float64Array;
  /** First parameter of the beta distribution; the second is 6 − alpha. */
  readonly alpha: Float64Array;
  /** Where a position's table of quantiles begins in `tables`; -1 when its duration is fixed. */
  readonly table: Int32Array;
  readonly tables: Float64Array;
  /** Draws are uniform on [floor, 1): above zero for a step in work that has lasted some time already ([FOR2]). */
  readonly floor: Float64Array;
  /** No start before: now, or the start of a step in work, whose links are left out. */
  readonly earliest: Float64Array;
  /** No finish before: now for a step in work. */
  readonly leastFinish: Float64Array;
  /** Finish of what is complete; NaN for all else. */
  readonly ended: Float64Array;
  /** For each position the spans of each window it must lie in; `null` for none. */
  readonly within: readonly (readonly (readonly Span[])[] | null)[];
  readonly limit: number | null;
}

/** What is sampled: a network with its times and windows, and how far its steps have come; nothing of a plan has begun. */
export type Sampled = Pick<Course, "network" | "whereabouts" | "windows"> &
  Partial<Pick<Course, "steps" | "now">>;

/**
 * Makes a plan or a course ready for sampling ([PLN5], [FOR2]): what is complete stays as it is, what is in work has lasted
 * since it began, and nothing else starts before the course's `now`. Its network must have no deadlock.
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
    earliest: new Float64Array(count).fill(now ?? 0),
    leastFinish: new Float64Array(count),
    ended: new Float64Array(count).fill(Number.NaN),
    alpha: new Float64Array(count).fill(1),
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
  return {
    ...model,
    tables: joined,
    within: order.map((index) => {
      if (begun(index)) return null;
      const spans = (outline.steps[index]?.step.within ?? []).flatMap((id) => {
        const known = windows.get(id);
        return known ? [known] : [];
      });
      return spans.length > 0 ? spans : null;
    }),
  };
}
