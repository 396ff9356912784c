import type { WeightedValue } from "../statistics/index.ts";
import { credibility } from "../statistics/index.ts";
import type { Observation } from "./observation.ts";
import type { Estimate } from "./step-model.ts";
import { USUAL_KAPPA } from "./step-model.ts";
import { weightsByKind } from "./weigh.ts";

/** From so many steps with evidence on they tell how far the planner's figures hold. */
const ENOUGH_STEPS = 20;

const LEAST = 0.5;
const MOST = 8;

/**
 * Returns how many walks the planner's figures count for (κ0): the variance within steps over that among them, by Bühlmann and
 * Straub, of how far observations are off the estimate of their step in its standard deviations; from 0.5 to 8. What was broken
 * off is left out, since nobody knows its length. With fewer than 20 steps with evidence, or where no step was done twice, it is 1.
 */
export function plannerWeight(
  steps: readonly { readonly estimate: Estimate; readonly observations: readonly Observation[] }[],
): number {
  const withEvidence = steps.filter(({ observations }) => observations.length > 0);
  if (withEvidence.length < ENOUGH_STEPS) return USUAL_KAPPA;
  const found = credibility(
    withEvidence.map(({ estimate, observations }) => {
      const weights = weightsByKind(observations);
      const values: WeightedValue[] = [];
      for (const [at, { minutes, isBrokenOff }] of observations.entries()) {
        const value = (Math.log(minutes) - estimate.mu) / estimate.sigma;
        if (!isBrokenOff) values.push({ value, weight: weights[at] ?? 1 });
      }
      return values;
    }),
  );
  if (!found) return USUAL_KAPPA;
  if (!(found.between > 0)) return MOST;
  return Math.min(MOST, Math.max(LEAST, found.within / found.between));
}
