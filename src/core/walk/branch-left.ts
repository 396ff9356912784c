import { message } from "../../words/index.ts";
import type { OutlineStep } from "../procedure/index.ts";
import type { DecisionId } from "../units/index.ts";
import type { Deviation } from "./deviation.ts";
import type { Ledger } from "./ledger.ts";
import { progressOf } from "./ledger.ts";

/**
 * Returns the decision by which a step's branch was left: it had come out as the step needs, and was taken otherwise
 * later ([WLK5]). `null` for a step that is performed, and for one whose branch never was in force.
 */
export function leftBy(ledger: Ledger, { step, index }: OutlineStep): DecisionId | null {
  if (!step.when || ledger.network.activity.active[index]) return null;
  const needed = Object.entries(step.when) as [DecisionId, string][];
  const wasInForce = needed.every(([id, outcome]) =>
    ledger.decisions.some((taken) => taken.decision === id && taken.outcome === outcome),
  );
  if (!wasInForce) return null;
  return needed.find(([id, outcome]) => ledger.outcomes.get(id) !== outcome)?.[0] ?? null;
}

/** Returns what was done on branches that were left: it stays done, and is a deviation for as long as its branch is not in force ([WLK5]). */
export function branchesLeft(ledger: Ledger): readonly Deviation[] {
  const { outline } = ledger.inForce;
  return outline.steps.flatMap((entry): readonly Deviation[] => {
    const { status, finish } = progressOf(ledger, entry.step.id);
    if (status !== "done" || finish === null) return [];
    const id = leftBy(ledger, entry);
    const made = id === null ? null : outline.decision(id);
    const [was, outcome] = id === null ? [] : [entry.step.when?.[id], ledger.outcomes.get(id)];
    if (!made || was === undefined || outcome === undefined) return [];
    const text = message("walk/branch-left", { ask: made.decision.ask, was, outcome });
    return [{ kind: "branch-left", step: entry.step.id, record: null, text, at: finish }];
  });
}
