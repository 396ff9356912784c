import type { Risk, RiskModel } from "../plan/index.ts";
import { riskModelOf, sampleRisk } from "../plan/index.ts";
import type { WalkState } from "./walk-state.ts";

/**
 * With this many samples a probability is accurate to about two percentage points, and sampling takes a few
 * milliseconds.
 */
const SAMPLES = 2000;

/** The seed for forecasts. It is fixed so that every device shows the same figure for the same walk and instant. */
const SEED = 1;

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
  samples: number = SAMPLES,
  seed: number = SEED,
): Risk | null {
  const model = forecastRiskModel(state);
  return model && sampleRisk(model, samples, seed);
}
