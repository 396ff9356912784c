import type { Entry, Fact } from "../log/index.ts";
import { deviceOf, keyOf } from "../log/index.ts";
import type { StepId } from "../units/index.ts";
import type { Folded } from "./walk-fold.ts";

/** A mark that one device made and that lost against another device's mark of the same step ([LOG3]: the order decides). */
export interface Overruled {
  /** `source` and `id` of the mark that lost. */
  readonly key: string;
  readonly step: StepId;
  /** What was entered and did not count. */
  readonly lost: "done" | "skipped";
  /** What counts. */
  readonly stands: "done" | "skipped";
  /** Who entered what counts; `null` when nobody is named. */
  readonly by: string | null;
}

const MARKS: Partial<Record<Fact["name"], "done" | "skipped">> = {
  "step.done": "done",
  "step.skipped": "skipped",
};

/**
 * The marks of a device that did not count because another device had marked the step otherwise before them in the order.
 * Two who mark it done agree, and neither is overruled.
 */
export function overruledOf(folded: Folded, device: string): readonly Overruled[] {
  const { ledger } = folded;
  if (!ledger || folded.ignored.length === 0) return [];
  const withoutEffect = new Set(folded.ignored.map(({ source, id }) => `${source} ${id}`));
  return folded.entries.flatMap((entry) => {
    if (deviceOf(entry.wire.source) !== device || !withoutEffect.has(keyOf(entry))) return [];
    const found = overruledBy(entry, ledger);
    return found ? [found] : [];
  });
}

function overruledBy(entry: Entry, ledger: NonNullable<Folded["ledger"]>): Overruled | null {
  const { fact } = entry.read;
  const lost = fact ? MARKS[fact.name] : undefined;
  if (!fact || !lost || !("step" in fact) || fact.step === undefined) return null;
  const progress = ledger.steps.get(fact.step);
  if (!progress?.completedBy || progress.status === "open" || progress.status === lost) return null;
  if (deviceOf(progress.completedBy.source) === deviceOf(entry.wire.source)) return null;
  return {
    key: keyOf(entry),
    step: fact.step,
    lost,
    stands: progress.status,
    by: progress.completedBy.actor,
  };
}
