import type { CourseStep } from "../course/index.ts";
import type { WalkRecord } from "../learn/index.ts";
import type { Review, WaitTotal } from "../review/index.ts";
import { reviewOf } from "../review/index.ts";
import type { CrewId, Duration, Instant, WalkId } from "../units/index.ts";
import type { Deviation } from "../walk/index.ts";
import { flownCourseOf } from "../walk/index.ts";
import type { LaneFitness, OrderKept } from "./order-kept.ts";
import { laneFitnesses, orderKept } from "./order-kept.ts";

/** One walk beside others ([CMP1]). Times are PET. */
export interface ComparedWalk {
  readonly walk: WalkId;
  readonly mode: "live" | "rehearsal";
  readonly revision: string | null;
  readonly began: Instant;
  /** How it was closed; `null` while it is open. */
  readonly end: NonNullable<Review["end"]>["end"] | null;
  readonly finish: Duration | null;
  readonly plannedFinish: Duration | null;
  readonly finishDifference: Duration | null;
  readonly margin: Duration | null;
  /** The steps that were done or skipped, in reading order. */
  readonly steps: readonly CourseStep[];
  /** What each lane waited for, longest first. */
  readonly waits: readonly (WaitTotal & { readonly crew: CrewId })[];
  readonly order: OrderKept;
  readonly lanes: readonly LaneFitness[];
  readonly deviations: readonly Deviation[];
}

/** Returns a walk as it is laid beside others, up to its last entry. */
export function comparedWalk({ folded, ledger, began }: WalkRecord): ComparedWalk {
  const at = folded.lastAt ?? began;
  const review = reviewOf(folded, at);
  if (!review) throw new UnopenedWalkError(ledger.opened.walk);
  const flown = flownCourseOf(ledger, at);
  return {
    walk: ledger.opened.walk,
    mode: ledger.opened.mode,
    revision: ledger.opened.procedure.outline.procedure.revision ?? null,
    began,
    end: review.end?.end ?? null,
    finish: review.actualFinish,
    plannedFinish: review.plannedFinish,
    finishDifference: review.finishDifference,
    margin: review.margin,
    steps: review.steps.flatMap(({ actual }) => actual ?? []),
    waits: review.lanes.flatMap(({ crew, waited }) => waited.map((one) => ({ ...one, crew }))),
    order: orderKept(ledger, flown),
    lanes: laneFitnesses(ledger, flown),
    deviations: review.deviations,
  };
}

/** A record has a walk that was opened: that there is no review of it is a mistake of our own. */
class UnopenedWalkError extends Error {
  override readonly name = "UnopenedWalkError";
}
