import type { Risk, RiskModel, StepStanding } from "../plan/index.ts";
import { riskModelOf, sampleRisk } from "../plan/index.ts";
import type { ForecastStep } from "./forecast.ts";
import type { WalkState } from "./walk-state.ts";

/** So many samples put a probability within about two percentage points, in a few milliseconds. */
const SAMPLES = 2000;

/** The seed of forecasts: fixed, so that the same walk at the same instant gives the same figure on every device. */
const SEED = 1;

function standingOf(step: ForecastStep | null): StepStanding | null {
  if (!step || step.stage === "to-come") return null;
  return step.stage === "complete"
    ? { stage: "complete", start: step.start, finish: step.finish }
    : { stage: "in-work", start: step.start };
}

/** What is to be sampled for the risk of the rest of a walk ([FOR2]); `null` when there is no forecast. */
export function forecastRiskModel({ ledger, forecast, pet }: WalkState): RiskModel | null {
  if (!forecast) return null;
  const { network, whereabouts } = forecast.scenario;
  return riskModelOf({
    network,
    times: whereabouts.times,
    windows: ledger.windows,
    limit: ledger.opened.outline.procedure.limits.elapsed ?? null,
    ...(pet === null ? {} : { now: pet, standing: forecast.steps.map(standingOf) }),
  });
}

/** The risk of the rest of a walk ([FOR2]): complete steps as they were, those in work on condition that they are not over. */
export function forecastRisk(state: WalkState, samples: number = SAMPLES, seed: number = SEED): Risk | null {
  const model = forecastRiskModel(state);
  return model && sampleRisk(model, samples, seed);
}
