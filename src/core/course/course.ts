import type { Network } from "../order/index.ts";
import type { Whereabouts } from "../place/index.ts";
import type { Location, Outline } from "../procedure/index.ts";
import type { DecisionId, Duration, ItemId, StepId } from "../units/index.ts";
import { minus } from "../units/index.ts";
import type { WindowSpans } from "../window/index.ts";
import type { Stretch } from "./stretch.ts";

/** How far a step has come: `planned` is everything that has not begun, whether by a plan or by a forecast. */
export type Stage = "planned" | "in-work" | "done" | "skipped";

/** One step on its way through time. A skipped step starts and finishes when it was skipped. */
export interface CourseStep extends Stretch {
  readonly step: StepId;
  readonly stage: Stage;
}

/** A hold in PET; `finish` is `null` while it lasts. */
export interface CourseHold {
  readonly start: Duration;
  readonly finish: Duration | null;
}

/** An item that was entered as being elsewhere than the steps would have it. */
export interface ItemCorrection {
  readonly at: Duration;
  readonly item: ItemId;
  readonly to: Location;
}

/**
 * Who does what when: the steps of a procedure laid out in time. A plan, a forecast and a walk as flown each produce one;
 * whatever shows, compares or learns from time reads one. All times are PET.
 */
export interface Course {
  readonly outline: Outline;
  readonly network: Network;
  readonly whereabouts: Whereabouts;
  readonly windows: WindowSpans;
  /** In the order of their start. */
  readonly holds: readonly CourseHold[];
  /** When decisions were taken; those of a plan are not taken at any time. */
  readonly decided: ReadonlyMap<DecisionId, Duration>;
  /** In the order in which they were entered. */
  readonly corrections: readonly ItemCorrection[];
  /** In reading order. A step that is not performed, or that a plan or forecast leaves out, is not there. */
  readonly steps: ReadonlyMap<StepId, CourseStep>;
  /** What lies before it happened; what lies behind is expected. `null` for a plan, of which nothing has happened. */
  readonly now: Duration | null;
  /** When the last step is complete; zero without steps. */
  readonly finish: Duration;
}

/** The elapsed limit − the finish of a course, below zero when over; `null` without a limit. */
export function marginOf({ outline, finish }: Course): Duration | null {
  const limit = outline.procedure.limits.elapsed;
  return limit === undefined ? null : minus(limit, finish);
}

/**
 * Whether a step is complete at a PET. What finishes at that very PET is complete, unless it is only expected to: a step
 * in work that is overdue is expected to finish now, and is not complete.
 */
export function isCompleteBy(
  { now }: Pick<Course, "now">,
  { stage, finish }: CourseStep,
  pet: Duration,
): boolean {
  const happened = stage === "done" || stage === "skipped" || now === null;
  return happened ? finish <= pet : finish <= pet && pet > now;
}

/** For each lane (index in `crew`) its steps in the order of time, skipped ones included; ties by finish, then reading order. */
export function lanesInTime({ outline, steps }: Course): readonly (readonly CourseStep[])[] {
  const lanes: CourseStep[][] = outline.crew.map(() => []);
  // The steps come in reading order and the sort is stable, which settles the ties that are left.
  for (const step of steps.values()) {
    for (const lane of outline.step(step.step)?.performers ?? []) lanes[lane]?.push(step);
  }
  for (const lane of lanes) lane.sort((a, b) => a.start - b.start || a.finish - b.finish);
  return lanes;
}
