import type { Message, Said } from "../../words/index.ts";
import type { CourseStep, Stretch, Wait } from "../course/index.ts";
import type { RecordedLight } from "../plan/index.ts";
import type { Location, Outline } from "../procedure/index.ts";
import type { SurpriseReview } from "../training/index.ts";
import type {
  CrewId,
  DecisionId,
  Duration,
  Instant,
  ItemId,
  StepId,
  TaskId,
  WatchId,
} from "../units/index.ts";
import type {
  AlertLog,
  AmendedHow,
  Deviation,
  Folded,
  IgnoredEntry,
  ItemMove,
  OpenedWalk,
  SupplyReading,
  TakenDecision,
} from "../walk/index.ts";
import type { AmendmentReview, DroppedStep } from "./amendment-review.ts";
import type { DelayShare } from "./delay.ts";
import type { ReopeningReview } from "./reopenings.ts";

/** A record that a step asks for, with the values that were taken. */
export interface RecordReview {
  readonly record: string;
  readonly label: string;
  /** UCUM code; `1` for a plain number. */
  readonly unit: string;
  readonly min: number | null;
  readonly max: number | null;
  /** The values, in the order in which they were taken; empty when none was. */
  readonly taken: readonly {
    readonly value: number;
    readonly at: Instant;
    readonly actor: string | null;
    readonly outOfRange: boolean;
  }[];
}

/** The confirmation that a step asks for; `given` is `null` when nobody gave it. */
export interface ConfirmReview {
  readonly by: CrewId;
  readonly text: string;
  readonly given: { readonly at: Instant; readonly actor: string | null } | null;
}

/** A round of a watch that fell due. */
export interface WatchReview {
  readonly watch: WatchId;
  readonly due: Duration;
  readonly isKept: boolean;
}

/** A reading of a supply. */
export interface ReadingReview extends SupplyReading {
  /** Why it cannot be true, and does not count ([OFF7]); `null` for one that counts. */
  readonly impossible: Message | null;
}

/** A note, with its text as written. */
export interface NoteReview {
  readonly at: Instant;
  readonly actor: string | null;
  readonly text: string;
}

/** A struck entry and its strike. */
export interface StruckReview {
  readonly source: string;
  readonly id: string;
  /** The type of the entry without the prefix. */
  readonly what: string;
  readonly step: StepId | null;
  /** The time of the entry itself. */
  readonly at: Instant;
  readonly struckAt: Instant;
  readonly struckBy: string | null;
  readonly reason: Said;
}

/**
 * How a step ended: done or skipped; in work or not started when the review was made; or not performed under the
 * decisions that were taken.
 */
export type StepEnding = "done" | "skipped" | "in-work" | "open" | "not-performed";

/**
 * One step, planned against actual ([REV1]). Differences are actual − planned, so a positive difference means later
 * or longer.
 */
export interface StepReview {
  readonly step: StepId;
  readonly ending: StepEnding;
  /**
   * In the plan of record; `null` when the step is not in it, because it is a get-ahead, in a branch that was not
   * expected, or added by an amendment.
   */
  readonly planned: CourseStep | null;
  /** Its times in the plan in force, those of the plan of record while there was no amendment; `null` when it is not in it. */
  readonly inForce: CourseStep | null;
  /** What amendments did to it, in the order of the log. */
  readonly amended: readonly AmendedHow[];
  /** `null` until it is done or skipped; a skipped step starts and finishes when it was skipped. */
  readonly actual: CourseStep | null;
  readonly startDifference: Duration | null;
  readonly finishDifference: Duration | null;
  /** Actual − planned duration; `null` for a step that was not done or not planned. */
  readonly timeDifference: Duration | null;
  /** The waits that kept its performers from starting it sooner. Waits without a cause are left out. */
  readonly waits: readonly CausedWait[];
  readonly outOfOrder: boolean;
  /** Why it was skipped; empty when it was not skipped or nobody gave a reason. */
  readonly skipReason: Said;
  readonly reopened: readonly { readonly at: Instant; readonly reason: string }[];
  readonly records: readonly RecordReview[];
  readonly confirm: ConfirmReview | null;
  readonly notes: readonly NoteReview[];
  readonly struck: readonly StruckReview[];
}

/** A wait whose cause is known. */
export type CausedWait = Wait & { readonly on: NonNullable<Wait["on"]> };

/** The total time for which a lane waited on one cause during the walk. */
export interface WaitTotal {
  readonly on: { readonly crew: readonly CrewId[] } | "lag" | "not-before" | "window" | "hold";
  readonly time: Duration;
}

/**
 * How one crew member spent the time from PET 0 to `until`. `worked`, `translated`, the sum of `waited`, and `idle`
 * add up to `until`. When two steps are done at the same time, that time counts once.
 */
export interface LaneReview {
  readonly crew: CrewId;
  /** The finish of the last step of the lane that was done; when a step is in work, the time of the review. */
  readonly until: Duration;
  readonly worked: Duration;
  /** The time spent in steps with a `to`. */
  readonly translated: Duration;
  /** The waiting time for each cause, longest first. */
  readonly waited: readonly WaitTotal[];
  /** The time without a step in work although nothing held up the next step. */
  readonly idle: Duration;
  readonly done: number;
  readonly skipped: number;
}

/** The planned or the actual side of a task. */
export interface TaskStretch extends Stretch {
  /** The sum over its steps of duration × number of performers. */
  readonly crewTime: Duration;
}

/** One task, planned against actual. */
export interface TaskReview {
  readonly task: TaskId;
  readonly title: string;
  readonly getAhead: boolean;
  /** `null` when the plan has none of its steps. */
  readonly planned: TaskStretch | null;
  /** From the start of its first done step to the finish of its last done step; `null` when no step was done. */
  readonly actual: TaskStretch | null;
  /** Actual − planned, for the first start, the last finish, the time between them, and the crew time. */
  readonly startDifference: Duration | null;
  readonly finishDifference: Duration | null;
  readonly timeDifference: Duration | null;
  readonly crewTimeDifference: Duration | null;
  readonly done: number;
  readonly skipped: number;
  /** The number of its steps that had to be performed under the decisions that were taken. */
  readonly of: number;
}

/**
 * The review of a walk ([REV1]): planned against actual, with every deviation. Times are PET unless they are
 * instants.
 */
export interface Review {
  readonly opened: OpenedWalk;
  /** The source of day and night that was followed in the end; `null` for none. */
  readonly light: RecordedLight | null;
  /** The procedure in force, whose steps are reviewed. */
  readonly outline: Outline;
  /** The instant of PET 0; `null` when the clock was never started. */
  readonly petZero: Instant | null;
  /** The instant up to which the walk is reviewed: its closing, or the requested instant. */
  readonly until: Instant;
  /** `null` while the walk is not closed. */
  readonly end: {
    readonly end: "complete" | "terminated" | "aborted";
    /** The reason; empty when nobody gave one. */
    readonly reason: Said;
    readonly at: Duration;
  } | null;
  /** By the plan of record. */
  readonly plannedFinish: Duration | null;
  /** By the plan in force ([AMD2]). */
  readonly inForceFinish: Duration | null;
  /** The latest finish of a done or skipped step; `null` when there is none. */
  readonly actualFinish: Duration | null;
  readonly finishDifference: Duration | null;
  /** The elapsed limit, by which the walk must be closed. */
  readonly limit: Duration | null;
  /** Limit − closing; while the walk is not closed, limit − the actual finish. `null` when either is unknown. */
  readonly margin: Duration | null;
  readonly holds: readonly (Stretch & { readonly reason: string; readonly lifted: boolean })[];
  readonly decisions: readonly {
    readonly decision: DecisionId;
    readonly outcome: string;
    readonly expected: boolean;
  }[];
  /** Every outcome that a decision got, in the order of the log. */
  readonly decided: readonly TakenDecision[];
  /** The rounds of watches that fell due, in order of time. */
  readonly watches: readonly WatchReview[];
  /** The readings of supplies, in the order of the log. */
  readonly readings: readonly ReadingReview[];
  readonly reopenings: readonly ReopeningReview[];
  /** The amendments of the plan, in the order of the log. */
  readonly amendments: readonly AmendmentReview[];
  /** The steps of the procedure as opened that amendments took out of the plan. */
  readonly dropped: readonly DroppedStep[];
  /** The moves of items that were entered by themselves, in the order of the log. */
  readonly corrections: readonly ItemMove[];
  /** The alerts that entries say were raised and seen. */
  readonly alerts: AlertLog;
  /** The surprises of a rehearsal, in the order in which they came; none while the walk is not closed ([TRN3]). */
  readonly surprises: readonly SurpriseReview[];
  /** What made the delay ([REV6]). */
  readonly delay: readonly DelayShare[];
  /** In reading order. */
  readonly steps: readonly StepReview[];
  readonly lanes: readonly LaneReview[];
  readonly tasks: readonly TaskReview[];
  /** Notes that belong to no step, or to one that an amendment took out of the plan. */
  readonly notes: readonly NoteReview[];
  readonly struck: readonly StruckReview[];
  readonly deviations: readonly Deviation[];
  readonly ignored: readonly IgnoredEntry[];
  readonly items: ReadonlyMap<ItemId, Location>;
  readonly entries: Folded["entries"];
}
