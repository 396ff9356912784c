import type { Risk, RiskModel } from "../plan/index.ts";
import { riskModelOf, sampleRisk } from "../plan/index.ts";
import type { WalkState } from "./walk-state.ts";

/** So many samples put a probability within about two percentage points, in a few milliseconds. */
const SAMPLES = 2000;

/** The seed of forecasts: fixed, so that the same walk at the same instant gives the same figure on every device. */
const SEED = 1;

/** What is to be sampled for the risk of the rest of a walk ([FOR2]); `null` when there is no forecast. */
export function forecastRiskModel({ forecast }: Pick<WalkState, "forecast">): RiskModel | null {
  return forecast && riskModelOf(forecast);
}

/** The risk of the rest of a walk ([FOR2]): complete steps as they were, those in work on condition that they are not over. */
export function forecastRisk(
  state: Pick<WalkState, "forecast">,
  samples: number = SAMPLES,
  seed: number = SEED,
): Risk | null {
  const model = forecastRiskModel(state);
  return model && sampleRisk(model, samples, seed);
}
