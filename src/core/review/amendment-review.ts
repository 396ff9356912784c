import type { Message } from "../../words/index.ts";
import { changeMessage, fieldsBefore } from "../changes/index.ts";
import type { CourseStep } from "../course/index.ts";
import type { OutlineStep } from "../procedure/index.ts";
import type { Amendment, AmendmentOutcome, AmendmentSeen, Ledger } from "../walk/index.ts";
import { amendmentOutcome, amendmentSeenBy, basePlanOf } from "../walk/index.ts";

/** An amendment of the plan: who, when, why, what it changed, and what it did to finish and margin ([AMD2]). */
export interface AmendmentReview
  extends Pick<Amendment, "source" | "id" | "at" | "pet" | "actor" | "reason" | "steps">,
    AmendmentOutcome {
  /** A sentence for each change. */
  readonly changes: readonly Message[];
  readonly seen: readonly AmendmentSeen[];
}

/** Returns the amendments of a walk, in the order of the log. */
export function amendmentsReviewed(ledger: Ledger): readonly AmendmentReview[] {
  return ledger.amendments.map((amendment): AmendmentReview => {
    const { source, id, at, pet, actor, reason, steps, changes, before } = amendment;
    const fieldsOf = fieldsBefore(before.file);
    return {
      source,
      id,
      at,
      pet,
      actor,
      reason,
      steps,
      changes: changes.map((change) => changeMessage(change, fieldsOf(change))),
      ...amendmentOutcome(amendment),
      seen: amendmentSeenBy(ledger, amendment),
    };
  });
}

/** A step of the procedure as opened that an amendment took out of the plan. */
export interface DroppedStep {
  /** The step with its place in the procedure as opened. */
  readonly entry: OutlineStep;
  /** Its times in the plan of record; `null` when it is not in it. */
  readonly planned: CourseStep | null;
}

/** Returns the steps of the procedure as opened that are not in force, in reading order. */
export function droppedSteps(ledger: Ledger): readonly DroppedStep[] {
  if (ledger.amendments.length === 0) return [];
  const { opened, inForce } = ledger;
  const planned = basePlanOf(ledger).timeline?.course.steps;
  return opened.procedure.outline.steps.flatMap((entry): DroppedStep[] =>
    inForce.outline.step(entry.step.id) ? [] : [{ entry, planned: planned?.get(entry.step.id) ?? null }],
  );
}
