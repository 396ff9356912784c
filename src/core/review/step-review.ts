import { keyOf } from "../log/index.ts";
import type { PlannedStep } from "../plan/index.ts";
import type { OutlineStep } from "../procedure/index.ts";
import type { Duration, Instant, StepId } from "../units/index.ts";
import { minus } from "../units/index.ts";
import type { Folded, Ledger, StepProgress } from "../walk/index.ts";
import { difference } from "./differences.ts";
import type {
  ActualWait,
  ConfirmReview,
  RecordReview,
  StepEnding,
  StepReview,
  StruckReview,
} from "./review.ts";

interface StepMaterial {
  readonly folded: Folded;
  readonly ledger: Ledger;
  readonly entry: OutlineStep;
  readonly planned: PlannedStep | null;
  readonly waits: readonly ActualWait[];
  readonly struck: readonly StruckReview[];
  readonly inWork: boolean;
  readonly inPet: (instant: Instant) => Duration;
}

/** One step of a walk, planned against actual. */
export function stepReview({
  folded,
  ledger,
  entry,
  planned,
  waits,
  struck,
  inWork,
  inPet,
}: StepMaterial): StepReview {
  const { index, step } = entry;
  const progress = ledger.steps[index];
  const actual =
    progress?.start != null && progress.finish !== null
      ? { start: inPet(progress.start), finish: inPet(progress.finish) }
      : null;
  const isDone = progress?.status === "done";
  return {
    index,
    ending: endingOf(ledger, index, progress, inWork),
    planned: planned && { start: planned.start, finish: planned.finish },
    actual,
    startDifference: difference(actual?.start ?? null, planned?.start ?? null),
    finishDifference: difference(actual?.finish ?? null, planned?.finish ?? null),
    timeDifference:
      isDone && actual && planned
        ? minus(minus(actual.finish, actual.start), minus(planned.finish, planned.start))
        : null,
    waits,
    outOfOrder: progress?.outOfOrder ?? false,
    skipReason: progress?.status === "skipped" ? progress.reason : "",
    reopened: reopenings(folded, step.id),
    records: step.records.map((record): RecordReview => {
      const taken = progress?.records.filter((one) => one.record === record.id) ?? [];
      return {
        record: record.id,
        label: record.label ?? record.id,
        unit: record.unit,
        min: record.min ?? null,
        max: record.max ?? null,
        taken: taken.map(({ value, at, actor, outOfRange }) => ({ value, at, actor, outOfRange })),
      };
    }),
    confirm: confirmOf(entry, progress),
    notes: ledger.notes
      .filter((note) => note.step === step.id)
      .map(({ at, actor, text }) => ({ at, actor, text })),
    struck,
  };
}

function endingOf(
  ledger: Ledger,
  index: number,
  progress: StepProgress | undefined,
  inWork: boolean,
): StepEnding {
  if (progress && progress.status !== "open") return progress.status;
  if (inWork) return "in-work";
  return ledger.network.activity.active[index] ? "open" : "not-performed";
}

function confirmOf({ step }: OutlineStep, progress: StepProgress | undefined): ConfirmReview | null {
  return (
    (step.confirm && { by: step.confirm.by, text: step.confirm.text, given: progress?.confirmed ?? null }) ??
    null
  );
}

/** The times a step was reopened, by the entries that had an effect. */
function reopenings({ entries, ignored, struck }: Folded, step: StepId): StepReview["reopened"] {
  return entries.flatMap((entry) => {
    const { fact } = entry.read;
    if (fact?.name !== "step.reopened" || fact.step !== step || struck.has(keyOf(entry))) return [];
    const hadNoEffect = ignored.some(
      ({ source, id }) => source === entry.wire.source && id === entry.wire.id,
    );
    return hadNoEffect ? [] : [{ at: entry.at, reason: fact.reason }];
  });
}
