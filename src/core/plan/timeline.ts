import type { Link, Network } from "../order/index.ts";
import type { Finding, Outline } from "../procedure/index.ts";
import type { CrewId, Duration, StepId, WindowId } from "../units/index.ts";
import { minus, NO_TIME, plus } from "../units/index.ts";
import { noFitFinding } from "./no-fit.ts";
import type { WindowSpans } from "./windows.ts";
import { earliestFit, latestFit } from "./windows.ts";

/** What a wait is for ([PLN3]): other crew members, a lag after a step, or a window. */
export type WaitOn =
  | { readonly crew: readonly CrewId[] }
  | { readonly lag: StepId }
  | { readonly window: WindowId };

/** The time a performer stands idle before a step. */
export interface Wait {
  readonly crew: CrewId;
  /** Longer than zero. */
  readonly time: Duration;
  readonly on: WaitOn;
}

/** One step in a timeline; all times in PET. */
export interface PlannedStep {
  readonly index: number;
  readonly start: Duration;
  readonly finish: Duration;
  readonly latestStart: Duration;
  readonly latestFinish: Duration;
  /** Latest start − earliest start. */
  readonly slack: Duration;
  /** How much later it may finish without moving any successor's earliest start. */
  readonly freeSlack: Duration;
  /** True when the slack is zero. */
  readonly critical: boolean;
  /** The link whose predecessor lets the step go last; `null` when it has none. */
  readonly binding: Link | null;
  /** The window that puts the start off; `null` when none does. */
  readonly boundBy: WindowId | null;
  readonly waits: readonly Wait[];
}

/** A plan in time ([PLN1] to [PLN3]). */
export interface Timeline {
  readonly network: Network;
  /** By reading order index; `null` for a step that is not in the plan. */
  readonly steps: readonly (PlannedStep | null)[];
  /** PET at which the last step is complete; zero for a plan of no steps. */
  readonly finish: Duration;
  /** Reading order indices from the first step of the critical path to the last. */
  readonly criticalPath: readonly number[];
}

/** The timeline of a network without deadlock; `null` with a finding for each step that fits no window ([PLN4]). */
export type Planned =
  | { readonly timeline: Timeline; readonly unfit: readonly [] }
  | { readonly timeline: null; readonly unfit: readonly Finding[] };

/**
 * Plans a network: earliest and latest times, slack, waits, critical path.
 * `times` are the durations by reading order index. The network must have no deadlock.
 */
export function planTimeline(network: Network, times: readonly Duration[], windows: WindowSpans): Planned {
  const { outline, before, behind, order } = network;
  const count = outline.steps.length;
  const start = new Float64Array(count);
  const finish = new Float64Array(count);
  const bound: (WindowId | null)[] = new Array<WindowId | null>(count).fill(null);
  const binding: (Link | null)[] = new Array<Link | null>(count).fill(null);
  const waits: Wait[][] = outline.steps.map(() => []);
  const laneFree = new Float64Array(outline.crew.length);
  const timeOf = (index: number) => times[index] ?? NO_TIME;
  const withinOf = (index: number) => outline.steps[index]?.step.within ?? [];
  const unfit: Finding[] = [];

  for (const index of order) {
    let from = 0;
    for (const link of before[index] ?? []) {
      const lets = (finish[link.from] ?? 0) + link.lag;
      if (binding[index] === null || lets > from) {
        from = Math.max(from, lets);
        binding[index] = link;
      }
    }
    const ready = from as Duration;
    const fit = earliestFit(ready, timeOf(index), withinOf(index), windows);
    const entry = outline.steps[index];
    if (!fit && entry) {
      unfit.push(noFitFinding(entry, outline.procedure.windows, ready, timeOf(index), windows));
    }
    if (!fit || unfit.length > 0) {
      // What comes behind is no earlier than this, so a step that does not fit then does not fit at all.
      finish[index] = (fit?.start ?? ready) + timeOf(index);
      continue;
    }
    start[index] = fit.start;
    finish[index] = fit.start + timeOf(index);
    bound[index] = fit.bound;
    for (const lane of outline.steps[index]?.performers ?? []) {
      const wait = waitOf(
        outline,
        lane,
        (fit.start - (laneFree[lane] ?? 0)) as Duration,
        binding[index] ?? null,
        fit.bound,
      );
      if (wait) waits[index]?.push(wait);
      laneFree[lane] = finish[index] ?? 0;
    }
  }
  if (unfit.length > 0) return { timeline: null, unfit };

  const end = order.reduce((last, index) => Math.max(last, finish[index] ?? 0), 0) as Duration;
  const latestStart = new Float64Array(count);
  const freeSlack = new Float64Array(count);
  for (const index of [...order].reverse()) {
    let latest = end as number;
    let free = end as number;
    for (const { to, lag } of behind[index] ?? []) {
      latest = Math.min(latest, (latestStart[to] ?? 0) - lag);
      free = Math.min(free, (start[to] ?? 0) - lag);
    }
    const late = (by: number) =>
      latestFit(by as Duration, timeOf(index), withinOf(index), windows) ?? start[index] ?? 0;
    latestStart[index] = late(latest);
    freeSlack[index] = late(free) - (start[index] ?? 0);
  }

  const steps = outline.steps.map(({ index }): PlannedStep | null => {
    if (!network.activity.active[index]) return null;
    const at = start[index] as Duration;
    const slack = minus(latestStart[index] as Duration, at);
    return {
      index,
      start: at,
      finish: finish[index] as Duration,
      latestStart: latestStart[index] as Duration,
      latestFinish: plus(latestStart[index] as Duration, timeOf(index)),
      slack,
      freeSlack: freeSlack[index] as Duration,
      critical: slack === 0,
      binding: binding[index] ?? null,
      boundBy: bound[index] ?? null,
      waits: waits[index] ?? [],
    };
  });
  return { timeline: { network, steps, finish: end, criticalPath: criticalPathOf(steps, end) }, unfit: [] };
}

function waitOf(
  outline: Outline,
  lane: number,
  time: Duration,
  binding: Link | null,
  bound: WindowId | null,
): Wait | null {
  const crew = outline.crew[lane]?.id;
  if (crew === undefined || time <= 0) return null;
  if (bound !== null) return { crew, time, on: { window: bound } };
  const predecessor = outline.steps[binding?.from ?? -1]?.step;
  if (!binding || !predecessor) return null;
  if (binding.lag > 0) return { crew, time, on: { lag: predecessor.id } };
  return { crew, time, on: { crew: predecessor.by.filter((other) => other !== crew) } };
}

function criticalPathOf(steps: readonly (PlannedStep | null)[], end: Duration): number[] {
  const path: number[] = [];
  let at = steps.find((step) => step !== null && step.finish === end) ?? null;
  while (at) {
    path.unshift(at.index);
    if (at.start === 0 || at.boundBy !== null) break;
    at = at.binding ? (steps[at.binding.from] ?? null) : null;
  }
  return path;
}
