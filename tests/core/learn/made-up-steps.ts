import { randomGamma, randomNormal } from "d3-random";
import type { Observation } from "../../../src/core/learn/observation.ts";
import type { Band, Estimate } from "../../../src/core/learn/step-model.ts";
import { bandOf, estimateOf, posteriorOf, priorOf } from "../../../src/core/learn/step-model.ts";
import { weighed } from "../../../src/core/learn/weigh.ts";
import { seededSource } from "../../../src/core/plan/index.ts";
import { mean } from "../../../src/core/statistics/index.ts";
import { ofSeconds } from "../../../src/core/units/index.ts";

/** A made-up step: what its planner said, how long it took in some walks, and how long it takes in the next one. */
export interface MadeUpStep {
  readonly estimate: Estimate;
  readonly minutes: readonly number[];
  readonly next: number;
}

/** Makes steps whose true lengths lie about the planner's figures as the model supposes, each walked so many times. */
export function madeUpSteps(count: number, walks: number, seed: number): readonly MadeUpStep[] {
  const random = seededSource(seed);
  const normal = randomNormal.source(random)();
  return Array.from({ length: count }, (): MadeUpStep => {
    const likely = 60 + 1200 * random();
    const low = likely * (0.5 + 0.4 * random());
    const high = likely * (1.2 + 1.3 * random());
    const estimate = estimateOf({ low: ofSeconds(low), likely: ofSeconds(likely), high: ofSeconds(high) });
    if (!estimate) throw new RangeError("a step of no time");
    const { mu, kappa, alpha, beta } = priorOf(estimate, 1);
    const variance = 1 / (randomGamma.source(random)(alpha, 1 / beta)() || Number.MIN_VALUE);
    const truth = mu + normal() * Math.sqrt(variance / kappa);
    const minutes = () => Math.exp(truth + normal() * Math.sqrt(variance));
    return { estimate, minutes: Array.from({ length: walks }, minutes), next: minutes() };
  });
}

const live = (minutes: number) => ({ minutes, mode: "live", isBrokenOff: false }) as unknown as Observation;

/** The bands in which the next walk is expected: learned, by the planner alone, and by the plain average of the walks. */
export function bandsOf({
  estimate,
  minutes,
}: MadeUpStep): Readonly<Record<"learned" | "planned" | "average", Band>> {
  const prior = priorOf(estimate, 1);
  const logs = minutes.map(Math.log);
  const middle = logs.length > 0 ? mean(logs) : estimate.mu;
  const spread =
    logs.length > 1
      ? Math.sqrt(mean(logs.map((y) => (y - middle) ** 2)) * (logs.length / (logs.length - 1)))
      : 0;
  const half = 1.2815515655446004 * spread;
  return {
    learned: bandOf(posteriorOf(prior, weighed(prior, minutes.map(live)))),
    planned: bandOf(prior),
    average: { p10: Math.exp(middle - half), p50: Math.exp(middle), p90: Math.exp(middle + half) },
  };
}

/** True when the next walk lies in a band. */
export const isHeld = ({ next }: MadeUpStep, { p10, p90 }: Band): boolean => p10 <= next && next <= p90;
