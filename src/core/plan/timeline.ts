import type { Course, CourseStep } from "../course/index.ts";
import type { Network } from "../order/index.ts";
import type { Whereabouts } from "../place/index.ts";
import type { Finding } from "../procedure/index.ts";
import type { Duration, StepId } from "../units/index.ts";
import { plus } from "../units/index.ts";
import type { WindowSpans } from "../window/index.ts";
import type { EarliestTimes } from "./schedule.ts";
import { earliestTimes, latestTimes } from "./schedule.ts";

/** How much later than planned a step may be ([PLN2]). Times are PET. */
export interface Slack {
  readonly latestStart: Duration;
  readonly latestFinish: Duration;
  /** Latest start − earliest start. */
  readonly slack: Duration;
  /** How much later it may finish without delaying the earliest start of any successor. */
  readonly freeSlack: Duration;
  /** True when the slack is zero. */
  readonly critical: boolean;
}

/** The times of a plan ([PLN1] to [PLN3]). */
export interface Timeline {
  /** The planned times of each step. The waits of the plan are those of this course. */
  readonly course: Course;
  /** The slack of each step in the course, in reading order. */
  readonly slack: ReadonlyMap<StepId, Slack>;
  /** The steps of the critical path, from first to last. */
  readonly criticalPath: readonly StepId[];
}

/**
 * The timeline of a network without deadlock; or `null` with a finding for each step that fits no window ([PLN4]).
 */
export type Planned =
  | { readonly timeline: Timeline; readonly unfit: readonly [] }
  | { readonly timeline: null; readonly unfit: readonly Finding[] };

/**
 * Plans a network with the likely durations: earliest and latest times, slack and critical path. The network must
 * have no deadlock.
 */
export function planTimeline(network: Network, whereabouts: Whereabouts, windows: WindowSpans): Planned {
  const { outline, activity } = network;
  const times = whereabouts.times.map(({ likely }) => likely);
  const earliest = earliestTimes({ network, times, windows });
  if (earliest.unfit.length > 0) return { timeline: null, unfit: earliest.unfit };
  const { start, finish, end } = earliest;
  const { latestStart, freeSlack } = latestTimes({ network, times, windows }, earliest);
  const steps = new Map<StepId, CourseStep>();
  const slacks = new Map<StepId, Slack>();
  for (const { index, step } of outline.steps) {
    if (!activity.active[index]) continue;
    const at = start[index] as Duration;
    const latest = latestStart[index] as Duration;
    steps.set(step.id, { step: step.id, start: at, finish: finish[index] as Duration, stage: "planned" });
    const slack = (latest - at) as Duration;
    slacks.set(step.id, {
      latestStart: latest,
      latestFinish: plus(latest, times[index] as Duration),
      slack,
      freeSlack: freeSlack[index] as Duration,
      critical: slack === 0,
    });
  }
  const course: Course = {
    outline,
    network,
    whereabouts,
    windows,
    holds: [],
    decided: new Map(),
    corrections: [],
    statesGiven: [],
    steps,
    now: null,
    finish: end,
  };
  return { timeline: { course, slack: slacks, criticalPath: criticalPathOf(network, earliest) }, unfit: [] };
}

function criticalPathOf({ outline, activity }: Network, earliest: EarliestTimes): StepId[] {
  const { start, finish, binding, boundBy, end } = earliest;
  const path: StepId[] = [];
  let at = outline.steps.find(({ index }) => activity.active[index] && finish[index] === end) ?? null;
  while (at) {
    path.unshift(at.step.id);
    if (start[at.index] === 0 || boundBy[at.index] !== null) break;
    at = outline.steps[binding[at.index]?.from ?? -1] ?? null;
  }
  return path;
}
