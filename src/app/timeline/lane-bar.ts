import type { CourseStep } from "../../core/course/index.ts";
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
  /** `null` when the step is not planned. */
  readonly slack: Slack | null;
  /** `null` on paper, and for a step that the forecast leaves out. */
  readonly flown: CourseStep | null;
  readonly onCriticalPath: boolean;
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
 * none.
 */
export function laneBarsOf(outline: Outline, timeline: Timeline, state: WalkState | null): LaneBar[][] {
  const path = new Set(timeline.criticalPath);
  const lanes: LaneBar[][] = outline.crew.map(() => []);
  for (const entry of outline.steps) {
    const planned = timeline.course.steps.get(entry.step.id) ?? null;
    const slack = timeline.slack.get(entry.step.id) ?? null;
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
