import type { Instant } from "../units/index.ts";
import { lanesRewound } from "./lane-progress.ts";
import type { LaidOutProcedure, LaneProgress, Ledger } from "./ledger.ts";
import { UNTOUCHED } from "./ledger.ts";
import { walkScenarioOf } from "./scenario-cache.ts";

/**
 * Returns the ledger as it would be with another procedure in force from an instant on, which must have the same crew,
 * windows and decisions: steps that are new are untouched and cannot have begun before, and the lanes are worked out
 * anew. The plan of record stays.
 */
export function ledgerWith(ledger: Ledger, inForce: LaidOutProcedure, at: Instant): Ledger {
  let { steps } = ledger;
  for (const { step } of inForce.outline.steps) {
    if (steps.get(step.id) === undefined) steps = steps.with(step.id, UNTOUCHED);
  }
  const next = { ...ledger, inForce, steps, ...walkScenarioOf(inForce.outline, ledger.outcomes) };
  const lanes = lanesRewound(next, steps).map((lane): LaneProgress => {
    const isNew = lane.next !== null && ledger.steps.get(lane.next) === undefined;
    return isNew && (lane.free === null || lane.free < at) ? { ...lane, free: at } : lane;
  });
  return { ...next, lanes };
}
