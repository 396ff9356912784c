import type { Entry, Fact } from "../log/index.ts";
import type { DecisionId } from "../units/index.ts";
import type { Ledger, SettledDecision } from "./ledger.ts";
import { progressOf } from "./ledger.ts";

/**
 * Returns what the lead said of a decision, as long as it holds: until its step is open again ([WLK5]). `null` when nothing was said,
 * or it holds no more.
 */
export function settledOf(ledger: Ledger, decision: DecisionId): SettledDecision | null {
  const settled = ledger.settled.get(decision);
  return settled && settled.reopenings === reopeningsOf(ledger, decision) ? settled : null;
}

/** Returns the ledger in which a decision is settled by an entry; its outcome is in force there already. */
export function settledBy(
  ledger: Ledger,
  entry: Entry,
  fact: Extract<Fact, { name: "decision.taken" }>,
): Ledger {
  const { decision, outcome } = fact;
  const settled: SettledDecision = {
    at: entry.at,
    actor: entry.wire.actor ?? null,
    outcome,
    takings: ledger.decisions.filter((taken) => taken.decision === decision).length,
    reopenings: reopeningsOf(ledger, decision),
  };
  return { ...ledger, settled: new Map(ledger.settled).set(decision, settled) };
}

/** Whether two devices decided differently, one after the other, and the lead has not said since which holds. */
export function isContrary(ledger: Ledger, decision: DecisionId): boolean {
  const takings = ledger.decisions.filter((taken) => taken.decision === decision);
  const [before, last] = takings.slice(-2);
  if (!before || !last || before.device === last.device) return false;
  return ledger.settled.get(decision)?.takings !== takings.length;
}

function reopeningsOf(ledger: Ledger, decision: DecisionId): number {
  const made = ledger.inForce.outline.decision(decision);
  return made ? progressOf(ledger, made.madeBy.step.id).reopened.length : 0;
}
