import type { PlannedStep, Timeline } from "../../core/plan/index.ts";
import type { Outline, OutlineStep } from "../../core/procedure/index.ts";
import type { Duration } from "../../core/units/index.ts";
import type { WalkState } from "../../core/walk/index.ts";

/** How a step went, goes or will go; times in PET. */
export interface FlownStep {
  readonly start: Duration;
  readonly finish: Duration;
  readonly stage: "complete" | "skipped" | "in-work" | "to-come";
}

/** A step on the lane of one of its performers. */
export interface LaneBar {
  readonly key: string;
  readonly lane: number;
  readonly entry: OutlineStep;
  /** `null` when the plan leaves it out (a branch not expected, a get-ahead). */
  readonly planned: PlannedStep | null;
  /** `null` on paper, and for a step the forecast leaves out. */
  readonly flown: FlownStep | null;
  readonly onCriticalPath: boolean;
}

/** How a step of a walk goes; `null` when the forecast leaves it out. */
function flownStepOf(state: WalkState, index: number): FlownStep | null {
  const step = state.forecast?.steps[index];
  if (!step) return null;
  const skipped = state.ledger.steps[index]?.status === "skipped";
  return { start: step.start, finish: step.finish, stage: skipped ? "skipped" : step.stage };
}

/** When a bar starts, as shown: as flown if there is a walk, else as planned. */
export function shownStart({ planned, flown }: LaneBar): Duration {
  return flown?.start ?? planned?.start ?? (0 as Duration);
}

/** When a bar ends, as shown. */
export function shownFinish({ planned, flown }: LaneBar): Duration {
  return flown?.finish ?? planned?.finish ?? (0 as Duration);
}

/** The bars of every lane, each lane in order of time. Steps in neither plan nor forecast have none. */
export function laneBarsOf(outline: Outline, timeline: Timeline, state: WalkState | null): LaneBar[][] {
  const path = new Set(timeline.criticalPath);
  const lanes: LaneBar[][] = outline.crew.map(() => []);
  for (const entry of outline.steps) {
    const planned = timeline.steps[entry.index] ?? null;
    const flown = state ? flownStepOf(state, entry.index) : null;
    if (!planned && !flown) continue;
    for (const lane of entry.performers) {
      const key = `${lane} ${entry.index}`;
      lanes[lane]?.push({ key, lane, entry, planned, flown, onCriticalPath: path.has(entry.index) });
    }
  }
  for (const bars of lanes) {
    bars.sort((a, b) => shownStart(a) - shownStart(b) || a.entry.index - b.entry.index);
  }
  return lanes;
}
