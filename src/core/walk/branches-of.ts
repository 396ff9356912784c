import { marginOf } from "../course/index.ts";
import type { DecisionId, Duration, StepId } from "../units/index.ts";
import { later } from "../units/index.ts";
import { forecastOf } from "./forecast.ts";
import { lanesRewound } from "./lane-progress.ts";
import { walkScenarioOf } from "./scenario-cache.ts";
import type { WalkState } from "./walk-state.ts";

/** What one outcome of a decision would lead to. */
export interface Branch {
  readonly outcome: string;
  /** True for the outcome that the procedure expects. */
  readonly isExpected: boolean;
  /** True for the outcome in force. */
  readonly isInForce: boolean;
  /** The steps that are performed with this outcome only, in reading order, complete ones included. */
  readonly steps: readonly StepId[];
  /** The forecast finish in PET; `null` when there is no forecast, and before the clock is started. */
  readonly finish: Duration | null;
  /** Limit − forecast finish; `null` without a limit or a forecast. */
  readonly margin: Duration | null;
}

/**
 * Returns what each outcome of a decision would lead to, in the order of the procedure, if it were taken at the instant of
 * the state ([WLK8]). The other decisions count as they stand. Empty for a decision that is not in the procedure.
 */
export function branchesOf(state: WalkState, decision: DecisionId): readonly Branch[] {
  const { ledger, pet } = state;
  const { outline } = ledger.inForce;
  const made = outline.decision(decision);
  if (!made) return [];
  return made.decision.outcomes.map((outcome) => {
    const steps = outline.steps.flatMap(({ step }) => (step.when?.[decision] === outcome ? [step.id] : []));
    const forecast = pet === null ? null : forecastWith(state, decision, outcome, pet);
    return {
      outcome,
      isExpected: made.decision.expect === outcome,
      isInForce: ledger.outcomes.get(decision) === outcome,
      steps,
      finish: forecast?.finish ?? null,
      margin: forecast && marginOf(forecast),
    };
  });
}

/** The forecast as if the decision had been taken so; the one in force for the outcome in force. */
function forecastWith({ ledger, forecast }: WalkState, decision: DecisionId, outcome: string, pet: Duration) {
  if (ledger.outcomes.get(decision) === outcome) return forecast;
  const at = later(ledger.petZero ?? ledger.opened.at, pet);
  const outcomes = new Map(ledger.outcomes).set(decision, outcome);
  const decidedAt = new Map(ledger.decidedAt).set(decision, at);
  const taken = { ...ledger, outcomes, decidedAt, ...walkScenarioOf(ledger.inForce.outline, outcomes) };
  return forecastOf({ ...taken, lanes: lanesRewound(taken, taken.steps) }, at);
}
