import type { Network, Precedence } from "../order/index.ts";
import type { Finding, OutlineStep } from "../procedure/index.ts";
import type { Duration, WindowId } from "../units/index.ts";
import { NO_TIME } from "../units/index.ts";
import type { WindowSpans } from "../window/index.ts";
import { earliestFit, latestFit } from "../window/index.ts";
import { noFitFinding } from "./no-fit.ts";
import { notBeforeOf } from "./time-bounds.ts";

/**
 * The input for scheduling: a network without deadlock, the durations of its steps by position in the outline, and
 * the windows.
 */
export interface Scheduled {
  readonly network: Network;
  readonly times: readonly Duration[];
  readonly windows: WindowSpans;
}

/**
 * The earliest times of a network, by position in the outline. Times are PET in ms, and zero for steps that are not
 * in the network.
 */
export interface EarliestTimes {
  readonly start: Float64Array;
  readonly finish: Float64Array;
  /** When the predecessors allow each step to start, with lags. */
  readonly ready: Float64Array;
  /** The link that allows each step to start last; `null` for a step without predecessors. */
  readonly binding: readonly (Precedence | null)[];
  /** The window that delays each start; `null` where no window does. */
  readonly boundBy: readonly (WindowId | null)[];
  /** When the last step is complete; zero when there are no steps. */
  readonly end: Duration;
  /** A finding for each step that fits no window ([PLN4]). The times are only valid when this is empty. */
  readonly unfit: readonly Finding[];
}

const withinOf = ({ outline }: Network, index: number) => outline.steps[index]?.step.within ?? [];

/** Returns the earliest times of a network ([PLN1]). */
export function earliestTimes({ network, times, windows }: Scheduled): EarliestTimes {
  const { outline, before, order } = network;
  const count = outline.steps.length;
  const start = new Float64Array(count);
  const finish = new Float64Array(count);
  const ready = new Float64Array(count);
  const binding = new Array<Precedence | null>(count).fill(null);
  const boundBy = new Array<WindowId | null>(count).fill(null);
  const unfit: Finding[] = [];
  let end = 0;
  for (const index of order) {
    const entry = outline.steps[index];
    let from: number = entry ? notBeforeOf(entry) : 0;
    for (const link of before[index] ?? []) {
      const lets = (finish[link.from] ?? 0) + link.lag;
      if ((binding[index] === null && lets >= from) || lets > from) {
        from = Math.max(from, lets);
        binding[index] = link;
      }
    }
    const length = times[index] ?? NO_TIME;
    const fit = earliestFit(from as Duration, length, withinOf(network, index), windows);
    if (!fit && entry) {
      unfit.push(noFitFinding(entry, outline.procedure.windows, from as Duration, length, windows));
    }
    // A step that does not fit counts as starting when it is ready. Its successors cannot really start any earlier,
    // so a successor that does not fit after this start does not fit at all.
    const begins = fit?.start ?? from;
    ready[index] = from;
    start[index] = begins;
    finish[index] = begins + length;
    boundBy[index] = fit?.bound ?? null;
    end = Math.max(end, begins + length);
  }
  return { start, finish, ready, binding, boundBy, end: end as Duration, unfit };
}

/** How late the steps may be, by position in the outline, in ms. */
export interface LatestTimes {
  /** The PET of the latest start that does not delay the finish of the plan. */
  readonly latestStart: Float64Array;
  /** How much later each step may finish without delaying the earliest start of any successor. */
  readonly freeSlack: Float64Array;
}

/**
 * Returns the latest times of a network, calculated backwards from the end of its earliest times by the same rules
 * ([PLN2]).
 */
export function latestTimes(
  { network, times, windows }: Scheduled,
  { start, finish, end }: Pick<EarliestTimes, "start" | "finish" | "end">,
): LatestTimes {
  const { outline, behind, order } = network;
  const latestStart = new Float64Array(outline.steps.length);
  const freeSlack = new Float64Array(outline.steps.length);
  for (const index of order.toReversed()) {
    const entry = outline.steps[index];
    const bound = entry?.step.doneBy ?? Number.POSITIVE_INFINITY;
    let latest = Math.min(end, bound);
    let free = Math.min(end, bound);
    for (const { to, lag } of behind[index] ?? []) {
      latest = Math.min(latest, (latestStart[to] ?? 0) - lag);
      free = Math.min(free, (start[to] ?? 0) - lag);
    }
    const earliest = start[index] ?? 0;
    const length = times[index] ?? NO_TIME;
    const startedBy = entry ? latestStartBound(entry, finish, network) : Number.POSITIVE_INFINITY;
    const late = (by: number) =>
      latestFit(Math.min(by, startedBy + length) as Duration, length, withinOf(network, index), windows) ??
      earliest;
    // A bound that the plan breaks leaves no slack; a finding says by how much.
    latestStart[index] = Math.max(earliest, late(latest));
    freeSlack[index] = Math.max(earliest, late(free)) - earliest;
  }
  return { latestStart, freeSlack };
}

/** The latest PET at which a step may start so long after the steps that it must follow within a time ([PRO17]). */
function latestStartBound(
  { step }: OutlineStep,
  finish: Float64Array,
  { outline, activity }: Network,
): number {
  return step.after.reduce((least, { step: id, within }) => {
    const from = outline.step(id)?.index;
    if (within === null || from === undefined || !activity.active[from]) return least;
    return Math.min(least, (finish[from] ?? 0) + within);
  }, Number.POSITIVE_INFINITY);
}
