import type { Course, CourseStep } from "../../core/course/index.ts";
import type { Slack, Timeline } from "../../core/plan/index.ts";
import type { Outline, OutlineStep } from "../../core/procedure/index.ts";
import type { Duration } from "../../core/units/index.ts";
import type { WalkState } from "../../core/walk/index.ts";

/** A step on the lane of one of its performers. */
export interface LaneBar {
  readonly key: string;
  readonly lane: number;
  readonly entry: OutlineStep;
  /** `null` when the plan leaves the step out, as a branch that is not expected or a get-ahead. */
  readonly planned: CourseStep | null;
  /** `null` when the step is not planned, and once the plan was amended. */
  readonly slack: Slack | null;
  /** `null` on paper, and for a step that the forecast leaves out. */
  readonly flown: CourseStep | null;
  readonly onCriticalPath: boolean;
}

/** What of a timeline its bars are made of: plain data, so that a worker can send it. */
export interface DrawnTimeline extends Pick<Timeline, "slack" | "criticalPath"> {
  readonly course: Pick<Course, "steps" | "finish">;
}

/** The start of a bar as shown: as flown if there is a walk, otherwise as planned. */
export function shownStart({ planned, flown }: LaneBar): Duration {
  return flown?.start ?? planned?.start ?? (0 as Duration);
}

/** The end of a bar as shown: as flown if there is a walk, otherwise as planned. */
export function shownFinish({ planned, flown }: LaneBar): Duration {
  return flown?.finish ?? planned?.finish ?? (0 as Duration);
}

/**
 * The bars of every lane, in order of time within each lane. A step that is in neither the plan nor the forecast has
 * none. The plan of a walk is the one in force: once it was amended, the slack and the critical path of the plan of record
 * do not apply to it, and none are drawn.
 */
export function laneBarsOf(outline: Outline, timeline: DrawnTimeline, state: WalkState | null): LaneBar[][] {
  const isOfRecord = state === null || state.ledger.amendments.length === 0;
  const inForce = isOfRecord ? timeline.course : state.inForce;
  const path = new Set(isOfRecord ? timeline.criticalPath : []);
  const lanes: LaneBar[][] = outline.crew.map(() => []);
  for (const entry of outline.steps) {
    const planned = inForce?.steps.get(entry.step.id) ?? null;
    const slack = (isOfRecord ? timeline.slack.get(entry.step.id) : null) ?? null;
    const flown = state?.forecast?.steps.get(entry.step.id) ?? null;
    if (!planned && !flown) continue;
    for (const lane of entry.performers) {
      const key = `${lane} ${entry.step.id}`;
      lanes[lane]?.push({ key, lane, entry, planned, slack, flown, onCriticalPath: path.has(entry.step.id) });
    }
  }
  for (const bars of lanes) {
    bars.sort((a, b) => shownStart(a) - shownStart(b) || a.entry.index - b.entry.index);
  }
  return lanes;
}
