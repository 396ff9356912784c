import type { Network } from "../order/index.ts";
import type { Whereabouts } from "../place/index.ts";
import type { Location, Outline } from "../procedure/index.ts";
import type { DecisionId, Duration, ItemId, StateId, StepId } from "../units/index.ts";
import { minus } from "../units/index.ts";
import type { WindowSpans } from "../window/index.ts";
import type { Stretch } from "./stretch.ts";

/** How far a step has come. `planned` is every step that has not begun, in a plan as well as in a forecast. */
export type Stage = "planned" | "in-work" | "done" | "skipped";

/** One step laid out in time. A skipped step starts and finishes at the moment it was skipped. */
export interface CourseStep extends Stretch {
  readonly step: StepId;
  readonly stage: Stage;
}

/** A hold in PET; `finish` is `null` while it lasts. */
export interface CourseHold {
  readonly start: Duration;
  readonly finish: Duration | null;
}

/** A log entry that puts an item at another location than the steps left it at. */
export interface ItemCorrection {
  readonly at: Duration;
  readonly item: ItemId;
  readonly to: Location;
}

/** A value that a state was given, by a step that is done or by an entry of its own. */
export interface StateGiven {
  readonly at: Duration;
  readonly state: StateId;
  readonly value: string;
}

/**
 * Who does what and when: the steps of a procedure laid out in time. A plan, a forecast and a walk as flown each
 * produce a course. Everything that shows, compares or learns from times reads one. All times are PET.
 */
export interface Course {
  readonly outline: Outline;
  readonly network: Network;
  readonly whereabouts: Whereabouts;
  readonly windows: WindowSpans;
  /** The holds in the order of their start. */
  readonly holds: readonly CourseHold[];
  /** When decisions were taken. Empty for a plan. */
  readonly decided: ReadonlyMap<DecisionId, Duration>;
  /** The corrections in the order in which they were entered. */
  readonly corrections: readonly ItemCorrection[];
  /** What states were given up to `now`, in the order in which it counts. Empty for a plan. */
  readonly statesGiven: readonly StateGiven[];
  /** The steps in reading order, without those that are not performed or that a plan or forecast leaves out. */
  readonly steps: ReadonlyMap<StepId, CourseStep>;
  /** What is before `now` has happened, what is after it is expected. `null` for a plan, where nothing has happened. */
  readonly now: Duration | null;
  /** When the last step is complete; zero without steps. */
  readonly finish: Duration;
}

/** The elapsed limit minus the finish of a course; below zero when the limit is exceeded, `null` without a limit. */
export function marginOf({ outline, finish }: Course): Duration | null {
  const limit = outline.procedure.limits.elapsed;
  return limit === undefined ? null : minus(limit, finish);
}

/**
 * True when a step is complete at a PET. A step that finishes at exactly that PET is complete, unless it is only
 * expected to: an overdue step in work is expected to finish now and is not complete.
 */
export function isCompleteBy(
  { now }: Pick<Course, "now">,
  { stage, finish }: CourseStep,
  pet: Duration,
): boolean {
  const happened = stage === "done" || stage === "skipped" || now === null;
  return happened ? finish <= pet : finish <= pet && pet > now;
}

const knownLanes = new WeakMap<Course, readonly (readonly CourseStep[])[]>();

/**
 * For each lane (index in `crew`) its steps in order of time, including skipped ones. Ties are broken by finish, then
 * by reading order. Results are cached for each course.
 */
export function lanesInTime(course: Course): readonly (readonly CourseStep[])[] {
  const kept = knownLanes.get(course);
  if (kept) return kept;
  const { outline, steps } = course;
  const lanes: CourseStep[][] = outline.crew.map(() => []);
  // The steps come in reading order and the sort is stable, which settles the remaining ties.
  for (const step of steps.values()) {
    for (const lane of outline.step(step.step)?.performers ?? []) lanes[lane]?.push(step);
  }
  for (const lane of lanes) lane.sort((a, b) => a.start - b.start || a.finish - b.finish);
  knownLanes.set(course, lanes);
  return lanes;
}
