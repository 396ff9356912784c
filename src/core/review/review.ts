import type { Said } from "../../words/index.ts";
import type { CourseStep, Stretch, Wait } from "../course/index.ts";
import type { Location, Outline } from "../procedure/index.ts";
import type { CrewId, DecisionId, Duration, Instant, ItemId, StepId, TaskId } from "../units/index.ts";
import type { Deviation, Folded, IgnoredEntry, OpenedWalk } from "../walk/index.ts";

/** A record that a step asks for, with what was taken. */
export interface RecordReview {
  readonly record: string;
  readonly label: string;
  /** UCUM code; `1` for a plain number. */
  readonly unit: string;
  readonly min: number | null;
  readonly max: number | null;
  /** In the order in which they were taken; empty when none was. */
  readonly taken: readonly {
    readonly value: number;
    readonly at: Instant;
    readonly actor: string | null;
    readonly outOfRange: boolean;
  }[];
}

/** The confirmation a step asks for; `given` is `null` when nobody gave it. */
export interface ConfirmReview {
  readonly by: CrewId;
  readonly text: string;
  readonly given: { readonly at: Instant; readonly actor: string | null } | null;
}

/** A note as written. */
export interface NoteReview {
  readonly at: Instant;
  readonly actor: string | null;
  readonly text: string;
}

/** An entry that was struck, and the strike. */
export interface StruckReview {
  readonly source: string;
  readonly id: string;
  /** Its type without the prefix. */
  readonly what: string;
  readonly step: StepId | null;
  /** When it said to have happened. */
  readonly at: Instant;
  readonly struckAt: Instant;
  readonly struckBy: string | null;
  readonly reason: Said;
}

/** How a step went: done, skipped, in work or not begun when the review was made, or not performed as decisions came out. */
export type StepEnding = "done" | "skipped" | "in-work" | "open" | "not-performed";

/** One step, planned against actual ([REV1]). Differences are actual − planned, so above zero is later or longer. */
export interface StepReview {
  readonly step: StepId;
  readonly ending: StepEnding;
  /** `null` when the step is not in the plan: a get-ahead, or a branch that was not expected. */
  readonly planned: CourseStep | null;
  /** `null` until it is done or skipped; a skipped step starts and finishes when it was skipped. */
  readonly actual: CourseStep | null;
  readonly startDifference: Duration | null;
  readonly finishDifference: Duration | null;
  /** Actual − planned duration; `null` for a step that was not done or not planned. */
  readonly timeDifference: Duration | null;
  /** What kept its performers from starting it sooner, those without a cause left out. */
  readonly waits: readonly CausedWait[];
  readonly outOfOrder: boolean;
  /** Why it was skipped; empty when it was not, or nobody said. */
  readonly skipReason: Said;
  readonly reopened: readonly { readonly at: Instant; readonly reason: string }[];
  readonly records: readonly RecordReview[];
  readonly confirm: ConfirmReview | null;
  readonly notes: readonly NoteReview[];
  readonly struck: readonly StruckReview[];
}

/** A wait with what it was for. */
export type CausedWait = Wait & { readonly on: NonNullable<Wait["on"]> };

/** What a lane waited on, added up over the walk. */
export interface WaitTotal {
  readonly on: { readonly crew: readonly CrewId[] } | "lag" | "window" | "hold";
  readonly time: Duration;
}

/**
 * What became of one crew member's time from PET 0 to `until`: `worked`, `translated`, the sum of `waited`, and `idle`
 * add up to `until`. Two steps done at the same time count once.
 */
export interface LaneReview {
  readonly crew: CrewId;
  /** When the lane's last step that was done was over, or, with a step in work, when the review was made. */
  readonly until: Duration;
  readonly worked: Duration;
  /** In steps with a `to`. */
  readonly translated: Duration;
  /** On whom or what, longest first. */
  readonly waited: readonly WaitTotal[];
  /** Without a step, though nothing held the next one up. */
  readonly idle: Duration;
  readonly done: number;
  readonly skipped: number;
}

/** One side, planned or actual, of a task. */
export interface TaskStretch extends Stretch {
  /** Durations of its steps times their performers, added up. */
  readonly crewTime: Duration;
}

/** One task, planned against actual. */
export interface TaskReview {
  readonly task: TaskId;
  readonly title: string;
  readonly getAhead: boolean;
  /** `null` when no step of it is in the plan. */
  readonly planned: TaskStretch | null;
  /** From the start of its first step done to the finish of its last; `null` when none was. */
  readonly actual: TaskStretch | null;
  /** Actual − planned of first start, last finish, the time between them, and crew time. */
  readonly startDifference: Duration | null;
  readonly finishDifference: Duration | null;
  readonly timeDifference: Duration | null;
  readonly crewTimeDifference: Duration | null;
  readonly done: number;
  readonly skipped: number;
  /** Steps that were to be performed as decisions came out. */
  readonly of: number;
}

/** A walk looked back on ([REV1]): planned against actual, with every deviation. Times are PET unless they are instants. */
export interface Review {
  readonly opened: OpenedWalk;
  /** The procedure in force, of whose steps the review tells. */
  readonly outline: Outline;
  /** The instant of PET 0; `null` when the clock was never started. */
  readonly petZero: Instant | null;
  /** The instant up to which the walk was looked at: its closing, or the instant asked for. */
  readonly until: Instant;
  /** `null` while the walk is not closed. */
  readonly end: {
    readonly end: "complete" | "terminated" | "aborted";
    /** Why; empty when nobody said. */
    readonly reason: Said;
    readonly at: Duration;
  } | null;
  readonly plannedFinish: Duration | null;
  /** When the last step that was done or skipped was over; `null` when none was. */
  readonly actualFinish: Duration | null;
  readonly finishDifference: Duration | null;
  /** The elapsed limit, by which the walk must be closed. */
  readonly limit: Duration | null;
  /** Limit − closing, or before that − the last step complete. */
  readonly margin: Duration | null;
  readonly holds: readonly (Stretch & { readonly reason: string; readonly lifted: boolean })[];
  readonly decisions: readonly {
    readonly decision: DecisionId;
    readonly outcome: string;
    readonly expected: boolean;
  }[];
  /** In reading order. */
  readonly steps: readonly StepReview[];
  readonly lanes: readonly LaneReview[];
  readonly tasks: readonly TaskReview[];
  /** Notes that belong to no step. */
  readonly notes: readonly NoteReview[];
  readonly struck: readonly StruckReview[];
  readonly deviations: readonly Deviation[];
  readonly ignored: readonly IgnoredEntry[];
  readonly items: ReadonlyMap<ItemId, Location>;
  readonly entries: Folded["entries"];
}
