import type { OutlineStep } from "../procedure/index.ts";
import type { DecisionId } from "../units/index.ts";
import type { Ledger } from "./ledger.ts";
import { progressOf } from "./ledger.ts";

/**
 * True while a decision is asked again: its step was opened again after it was taken, and has not been done or decided
 * anew since ([WLK5]). Its outcome stays in force for lanes and forecasts.
 */
export function isAskedAgain(ledger: Ledger, decision: DecisionId): boolean {
  const decidedAt = ledger.decidedAt.get(decision);
  const madeBy = ledger.inForce.outline.decision(decision)?.madeBy;
  if (decidedAt === undefined || !madeBy || !ledger.network.activity.active[madeBy.index]) return false;
  const { status, reopened } = progressOf(ledger, madeBy.step.id);
  const last = reopened.at(-1);
  return status === "open" && last !== undefined && last.at > decidedAt;
}

/** Returns the first decision that a step hangs on and that is asked again; `null` when there is none. */
export function askedAgainFor(ledger: Ledger, { step }: OutlineStep): DecisionId | null {
  if (!step.when) return null;
  const names = Object.keys(step.when) as DecisionId[];
  return names.find((name) => isAskedAgain(ledger, name)) ?? null;
}
