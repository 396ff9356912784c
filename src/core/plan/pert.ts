import { randomBeta } from "d3-random";
import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import type { StepTime } from "../procedure/index.ts";
import type { Duration } from "../units/index.ts";

/** Returns random numbers from the uniform distribution on [0, 1). */
export type RandomSource = () => number;

/** Returns a source that gives the same numbers for the same seed (xoroshiro128+, Blackman & Vigna 2018). */
export function seededSource(seed: number): RandomSource {
  const generator = xoroshiro128plus(seed);
  return () => uniformFloat64(generator);
}

/**
 * Returns a function that draws durations from the PERT-beta distribution on [low, high] with mode `likely` and shape
 * 4 (Malcolm, Roseboom, Clark & Fazar 1959; mean (low + 4 likely + high)/6), rounded to the millisecond ([PLN5]).
 */
export function pertSampler(random: RandomSource): (time: StepTime) => Duration {
  const beta = randomBeta.source(random);
  return ({ low, likely, high }) => {
    const width = high - low;
    if (width === 0) return likely;
    const share = beta(1 + (4 * (likely - low)) / width, 1 + (4 * (high - likely)) / width)();
    return Math.round(low + width * share) as Duration;
  };
}
