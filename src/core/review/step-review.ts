import type { CourseStep } from "../course/index.ts";
import type { OutlineStep } from "../procedure/index.ts";
import { minus } from "../units/index.ts";
import type { Ledger } from "../walk/index.ts";
import { progressOf, skipReason } from "../walk/index.ts";
import { difference } from "./differences.ts";
import type { CausedWait, NoteReview, RecordReview, StepEnding, StepReview, StruckReview } from "./review.ts";

interface StepMaterial {
  readonly ledger: Ledger;
  readonly entry: OutlineStep;
  readonly planned: CourseStep | null;
  readonly inForce: CourseStep | null;
  readonly flown: CourseStep | null;
  readonly waits: readonly CausedWait[];
  readonly notes: readonly NoteReview[];
  readonly struck: readonly StruckReview[];
}

/** Returns the review of one step of a walk, planned against actual. */
export function stepReview({
  ledger,
  entry,
  planned,
  inForce,
  flown,
  waits,
  notes,
  struck,
}: StepMaterial): StepReview {
  const { step } = entry;
  const progress = progressOf(ledger, step.id);
  const actual = flown && flown.stage !== "in-work" ? flown : null;
  return {
    step: step.id,
    ending: endingOf(ledger, entry, flown),
    planned,
    inForce,
    amended: ledger.amendments.flatMap(({ steps }) =>
      steps.flatMap((one) => (one.step === step.id ? [one.how] : [])),
    ),
    actual,
    startDifference: difference(actual?.start ?? null, planned?.start ?? null),
    finishDifference: difference(actual?.finish ?? null, planned?.finish ?? null),
    timeDifference:
      actual?.stage === "done" && planned
        ? minus(minus(actual.finish, actual.start), minus(planned.finish, planned.start))
        : null,
    waits,
    outOfOrder: progress.outOfOrder,
    skipReason: skipReason(progress),
    reopened: progress.reopened,
    records: step.records.map((record): RecordReview => {
      const taken = progress.records.filter((one) => one.record === record.id);
      return {
        record: record.id,
        label: record.label ?? record.id,
        unit: record.unit,
        min: record.min ?? null,
        max: record.max ?? null,
        taken: taken.map(({ value, at, actor, outOfRange }) => ({ value, at, actor, outOfRange })),
      };
    }),
    confirm: step.confirm
      ? { by: step.confirm.by, text: step.confirm.text, given: progress.confirmed }
      : null,
    notes,
    struck,
  };
}

function endingOf(ledger: Ledger, { index }: OutlineStep, flown: CourseStep | null): StepEnding {
  if (flown?.stage === "in-work") return "in-work";
  if (flown) return flown.stage === "skipped" ? "skipped" : "done";
  return ledger.network.activity.active[index] ? "open" : "not-performed";
}
