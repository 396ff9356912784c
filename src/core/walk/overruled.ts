import type { Message } from "../../words/index.ts";
import type { Entry, Fact } from "../log/index.ts";
import { deviceOf, keyOf } from "../log/index.ts";
import type { StepId } from "../units/index.ts";
import type { Folded } from "./walk-fold.ts";

/**
 * A mark by one device that lost against what the lead settled of a decision, against what another device entered of the same step, against its asking again the
 * decision on which the step hangs, or against an amendment that took the step out of the plan. The order of the log decides what counts ([LOG3]).
 */
export interface Overruled {
  /** `source` and `id` of the mark that lost. */
  readonly key: string;
  readonly step: StepId;
  /** The mark that was entered and does not count. */
  readonly lost: "done" | "skipped" | "decided";
  /**
   * How the step stands: by the mark that counts, open while its decision is asked again, or dropped when an amendment took
   * it out of the plan; settled when the lead had said which outcome holds.
   */
  readonly stands: "done" | "skipped" | "open" | "dropped" | "settled";
  /** Who entered what counts: the other mark, or the amendment; `null` when no person is named, or when the step is open. */
  readonly by: string | null;
}

const MARKS: Partial<Record<Fact["name"], "done" | "skipped">> = {
  "step.done": "done",
  "step.skipped": "skipped",
};

/**
 * Returns the marks of a device that do not count because another device marked the step differently, or asked again the
 * decision on which it hangs, earlier in the log order, or because the step had been taken out of the plan. When two devices both mark a step done, they agree and neither is overruled.
 */
export function overruledOf(folded: Folded, device: string): readonly Overruled[] {
  const { ledger } = folded;
  if (!ledger || folded.ignored.length === 0) return [];
  const withoutEffect = new Map(folded.ignored.map(({ source, id, reason }) => [`${source} ${id}`, reason]));
  return folded.entries.flatMap((entry) => {
    const reason = withoutEffect.get(keyOf(entry));
    if (deviceOf(entry.wire.source) !== device || !reason) return [];
    const found = overruledBy(entry, ledger, reason);
    return found ? [found] : [];
  });
}

function overruledBy(entry: Entry, ledger: NonNullable<Folded["ledger"]>, reason: Message): Overruled | null {
  const { fact } = entry.read;
  if (fact?.name === "decision.taken" && reason.key === "walk/decision-settled") {
    const made = ledger.inForce.outline.decision(fact.decision);
    if (!made) return null;
    const by = ledger.settled.get(fact.decision)?.actor ?? null;
    return { key: keyOf(entry), step: made.madeBy.step.id, lost: "decided", stands: "settled", by };
  }
  const lost = fact ? MARKS[fact.name] : undefined;
  if (!fact || !lost || !("step" in fact) || fact.step === undefined) return null;
  const { step } = fact;
  if (reason.key === "walk/step-dropped") {
    const dropping = ledger.amendments.findLast(({ steps }) =>
      steps.some((one) => one.step === step && one.how === "dropped"),
    );
    return { key: keyOf(entry), step, lost, stands: "dropped", by: dropping?.actor ?? null };
  }
  const progress = ledger.steps.get(step);
  if (progress?.status === "open" && reason.key === "walk/asked-again-first")
    return { key: keyOf(entry), step: fact.step, lost, stands: "open", by: null };
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
