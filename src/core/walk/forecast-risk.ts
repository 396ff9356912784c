import type { Risk, RiskModel } from "../plan/index.ts";
import { riskModelOf, sampleRisk } from "../plan/index.ts";
import type { WalkState } from "./walk-state.ts";

/**
 * How forecasts are sampled. With so many samples a probability is accurate to about two percentage points, and sampling
 * takes a few milliseconds. The seed is fixed, so that every device shows the same figure for the same walk and instant.
 */
export const FORECAST_DRAWS = { samples: 2000, seed: 1 };

/** Returns the model to sample for the risk of the rest of a walk ([FOR2]), or `null` when there is no forecast. */
export function forecastRiskModel({ forecast }: Pick<WalkState, "forecast">): RiskModel | null {
  return forecast && riskModelOf(forecast);
}

/**
 * Returns the risk of the rest of a walk ([FOR2]), or `null` when there is no forecast. Complete steps keep their
 * times. Durations of steps in work are drawn on the condition that the step is not over yet.
 */
export function forecastRisk(
  state: Pick<WalkState, "forecast">,
  samples: number = FORECAST_DRAWS.samples,
  seed: number = FORECAST_DRAWS.seed,
): Risk | null {
  const model = forecastRiskModel(state);
  return model && sampleRisk(model, samples, seed);
}
