import type { Course } from "../course/index.ts";
import { marginOf } from "../course/index.ts";
import type { OutlineDecision } from "../procedure/index.ts";
import type { DecisionId, Duration, PlaceId, StepId } from "../units/index.ts";
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
  /** Where these steps are done, each place once, in their order; empty where the procedure does not say. */
  readonly places: readonly PlaceId[];
  /**
   * The next joint step, behind the decision, of those whom the decision concerns: who takes it, and who performs a step
   * that hangs on it. `start` is its forecast start in PET. `null` when there is none to come, or no forecast.
   */
  readonly joint: { readonly step: StepId; readonly start: Duration } | null;
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
    const steps = outline.steps.filter(({ step }) => step.when?.[decision] === outcome);
    const forecast = pet === null ? null : forecastWith(state, decision, outcome, pet);
    return {
      outcome,
      isExpected: made.decision.expect === outcome,
      isInForce: ledger.outcomes.get(decision) === outcome,
      steps: steps.map(({ step }) => step.id),
      places: [...new Set(steps.flatMap(({ step }) => step.to ?? step.at ?? []))],
      joint: forecast && nextJointStep(forecast, made),
      finish: forecast?.finish ?? null,
      margin: forecast && marginOf(forecast),
    };
  });
}

/** The joint step that is forecast to begin first, of those behind a decision in which somebody takes part whom it concerns. */
function nextJointStep({ outline, steps }: Course, { decision, madeBy }: OutlineDecision): Branch["joint"] {
  const hanging = outline.steps.filter(({ step }) => step.when?.[decision.id] !== undefined);
  const concerned = new Set([madeBy, ...hanging].flatMap(({ performers }) => performers));
  let first: Branch["joint"] = null;
  for (const { step, stage, start } of steps.values()) {
    const entry = outline.step(step);
    if (stage !== "planned" || !entry || entry.index <= madeBy.index || entry.performers.length < 2) continue;
    if (!entry.performers.some((lane) => concerned.has(lane))) continue;
    if (first === null || start < first.start) first = { step, start };
  }
  return first;
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
