import type { Message } from "../../words/index.ts";
import type { Instant, RecordId, StepId, WindowId } from "../units/index.ts";

/** Something that was not over when a step was marked done, although all steps before it were complete ([OFF2]). */
export type EarlyMark =
  /** The time after `step` was still running, and is over at `until`. */
  | { readonly kind: "lag-not-over"; readonly step: StepId; readonly until: Instant }
  /** The step does not start before `until` ([PRO17]). */
  | { readonly kind: "time-not-reached"; readonly until: Instant }
  /** The step fits the window only from `until` on; `null` when it fits none of its windows any more. */
  | { readonly kind: "window-not-over"; readonly window: WindowId; readonly until: Instant | null }
  /** A hold was in force since `since`. */
  | { readonly kind: "hold-not-over"; readonly since: Instant };

/** The kinds of {@link Deviation}. */
export type DeviationKind =
  | "skipped"
  | "out-of-order"
  /** A value outside its limits that no later value has made good. */
  | "record-out-of-range"
  /** A value outside its limits after which one within them was taken. */
  | "record-corrected"
  /** The step was marked done before something was over ([OFF2]). */
  | EarlyMark["kind"]
  /** Something that was owed and is not there ([OFF2]). */
  | MissingKind
  /** The walk was called complete while somebody was not known to be at a refuge ([OFF5]). */
  | "closed-outside"
  /** The step was done on a branch of a decision that was taken otherwise ([WLK5]). */
  | "branch-left"
  | "amended"
  | "struck";

/** What can be owed and missing, apart from what was not over when a step was marked ([OFF2]). */
export type MissingKind =
  | "record-not-taken"
  | "confirmation-not-given"
  | "check-not-counted"
  | "watch-not-kept"
  | "reason-not-given";

/** Something that was done differently from the plan. */
export interface Deviation {
  readonly kind: DeviationKind;
  readonly step: StepId | null;
  /** The record of a value outside its limits; `null` for every other kind. */
  readonly record: RecordId | null;
  readonly text: Message;
  readonly at: Instant;
}
