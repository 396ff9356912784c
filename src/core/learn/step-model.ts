import type { StepTime } from "../procedure/index.ts";
import { NORMAL_NINE_TENTHS, normalHazard, tQuantile } from "../statistics/index.ts";
import { inMinutes } from "../units/index.ts";

/** A normal-inverse-gamma distribution of the mean and variance of y = ln(minutes) (Murphy 2007). */
export interface Belief {
  readonly mu: number;
  readonly kappa: number;
  readonly alpha: number;
  readonly beta: number;
}

/** What the planner's low, likely and high say of y: its mean and its standard deviation. */
export interface Estimate {
  readonly mu: number;
  readonly sigma: number;
}

/** An observed y with its weight; where it was broken off, the true one is larger. */
export interface WeightedLog {
  readonly y: number;
  readonly weight: number;
  readonly isBrokenOff: boolean;
}

/** How many walks the planner's figures count for, until enough steps tell how far they hold. */
export const USUAL_KAPPA = 1;

const ALPHA = 2;

/** How many scales of the prior's predictive distribution its 90 % point lies above its middle. */
const PRIOR_NINE_TENTHS = tQuantile(0.9, 2 * ALPHA);

/** The spread that is taken of an estimate which is one figure: it says nothing of its own. */
const UNSAID_SIGMA = 0.2;

/**
 * Returns what the planner's figures say of y ([LRN2]): the log-normal distribution with the mean and variance of the PERT
 * estimate. `null` for a step that is planned to take no time.
 */
export function estimateOf({ low, likely, high }: StepTime): Estimate | null {
  if (likely <= 0) return null;
  const [l, k, h] = [inMinutes(low), inMinutes(likely), inMinutes(high)];
  const m = (l + 4 * k + h) / 6;
  const variance = ((m - l) * (h - m)) / 7;
  const sigma = variance > 0 ? Math.sqrt(Math.log(1 + variance / m ** 2)) : UNSAID_SIGMA;
  return { mu: Math.log(m) - sigma ** 2 / 2, sigma };
}

/** Returns the belief before any walk: its predictive distribution has the planner's 10 and 90 % points, whatever `kappa` is. */
export function priorOf({ mu, sigma }: Estimate, kappa: number): Belief {
  const beta = ((ALPHA * kappa) / (kappa + 1)) * ((NORMAL_NINE_TENTHS * sigma) / PRIOR_NINE_TENTHS) ** 2;
  return { mu, kappa, alpha: ALPHA, beta };
}

const CLOSE = 1e-14;
const MOST_ROUNDS = 2000;

/**
 * Returns the belief after some observations ([LRN2]). What was broken off counts as what it would have come to by the belief
 * itself, its spread included, until that stays the same (EM; Dempster, Laird & Rubin 1977).
 */
export function posteriorOf(prior: Belief, observed: readonly WeightedLog[]): Belief {
  let belief = updated(prior, observed, null);
  if (!observed.some(({ isBrokenOff }) => isBrokenOff)) return belief;
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const next = updated(prior, observed, belief);
    const isSettled =
      Math.abs(next.mu - belief.mu) <= CLOSE * Math.max(1, Math.abs(next.mu)) &&
      Math.abs(next.beta - belief.beta) <= CLOSE * next.beta;
    belief = next;
    if (isSettled) break;
  }
  return belief;
}

/** One update; `by` is the belief by which what was broken off is completed, `null` to take it as it stands. */
function updated(prior: Belief, observed: readonly WeightedLog[], by: Belief | null): Belief {
  return beliefAfter(prior, sumsOf(by === null ? observed : observed.map((one) => completedBy(one, by))));
}

/** What counts of some weighted logs: their weight, their mean, and the weighted squares about it. */
interface LogSums {
  readonly weight: number;
  readonly middle: number;
  readonly squares: number;
}

/** A weighted log as it counts; `variance` is that of what was completed, absent for one that was observed. */
interface CountedLog {
  readonly y: number;
  readonly weight: number;
  readonly variance?: number;
}

function sumsOf(logs: readonly CountedLog[]): LogSums {
  let [weight, total, squares] = [0, 0, 0];
  for (const one of logs) {
    weight += one.weight;
    total += one.weight * one.y;
  }
  const middle = weight === 0 ? 0 : total / weight;
  for (const one of logs) squares += one.weight * ((one.y - middle) ** 2 + (one.variance ?? 0));
  return { weight, middle, squares };
}

function beliefAfter(prior: Belief, { weight, middle, squares }: LogSums): Belief {
  if (weight === 0) return prior;
  const kappa = prior.kappa + weight;
  return {
    mu: (prior.kappa * prior.mu + weight * middle) / kappa,
    kappa,
    alpha: prior.alpha + weight / 2,
    beta: prior.beta + squares / 2 + (prior.kappa * weight * (middle - prior.mu) ** 2) / (2 * kappa),
  };
}

/** Returns for each observation the belief after all others, as if it had not been made. */
export function beliefsWithout(prior: Belief, observed: readonly WeightedLog[]): readonly Belief[] {
  if (observed.some(({ isBrokenOff }) => isBrokenOff)) {
    return observed.map((_, at) =>
      posteriorOf(
        prior,
        observed.filter((_, other) => other !== at),
      ),
    );
  }
  const { weight, middle, squares } = sumsOf(observed);
  return observed.map((own) => {
    const left = weight - own.weight;
    if (observed.length === 1 || !(left > 0)) return prior;
    const off = own.y - middle;
    return beliefAfter(prior, {
      weight: left,
      middle: middle - (own.weight * off) / left,
      // The last digits of equal values may come out below zero.
      squares: Math.max(0, squares - (own.weight * off * off * weight) / left),
    });
  });
}

/** The mean and the variance of what was broken off, given that it is larger; an observed one as it is. */
function completedBy(observed: WeightedLog, by: Belief): CountedLog {
  const { y, weight, isBrokenOff } = observed;
  if (!isBrokenOff || !(by.beta > 0)) return observed;
  const sigma = Math.sqrt(by.beta / by.alpha);
  const z = (y - by.mu) / sigma;
  const hazard = normalHazard(z);
  return {
    y: by.mu + sigma * hazard,
    weight,
    variance: Math.max(0, sigma ** 2 * (1 + z * hazard - hazard ** 2)),
  };
}

/** The scale of the predictive distribution, a Student t with 2α degrees of freedom at μ. */
export function predictiveScale({ kappa, alpha, beta }: Belief): number {
  return Math.sqrt((beta * (kappa + 1)) / (alpha * kappa));
}

/** The 10, 50 and 90 % points of what is to be expected of the next walk, in minutes. */
export interface Band {
  readonly p10: number;
  readonly p50: number;
  readonly p90: number;
}

/** How far the 90 % point of what is expected lies above its middle, in y. */
export function halfOf(belief: Belief): number {
  return nineTenthsOf(2 * belief.alpha) * predictiveScale(belief);
}

/** Most steps of a procedure were done equally often, and so have the same degrees of freedom. */
const nineTenths = new Map<number, number>([[2 * ALPHA, PRIOR_NINE_TENTHS]]);
const MOST_KEPT = 1000;

function nineTenthsOf(degrees: number): number {
  const known = nineTenths.get(degrees);
  if (known !== undefined) return known;
  const found = tQuantile(0.9, degrees);
  if (nineTenths.size < MOST_KEPT) nineTenths.set(degrees, found);
  return found;
}

/** Returns the band in which eight of ten further observations are expected; `half` as {@link halfOf} gives it. */
export function bandOf(belief: Belief, half: number = halfOf(belief)): Band {
  return {
    p10: Math.exp(belief.mu - half),
    p50: Math.exp(belief.mu),
    p90: Math.exp(belief.mu + half),
  };
}

/** The spread of the belief over that of the estimate: 1 without evidence, more where walks vary more than was planned. */
export function spreadRatio(half: number, { sigma }: Estimate): number {
  return half / (NORMAL_NINE_TENTHS * sigma);
}
