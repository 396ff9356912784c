import { incompleteBeta } from "./incomplete-beta.ts";
import { logGamma } from "./log-gamma.ts";

/** Returns the share of Student's t distribution above `t` ≥ 0, exact also where it is tiny. */
function tail(t: number, degrees: number): number {
  return incompleteBeta(degrees / (degrees + t * t), degrees / 2, 0.5) / 2;
}

function density(t: number, degrees: number): number {
  const log =
    logGamma((degrees + 1) / 2) -
    logGamma(degrees / 2) -
    Math.log(degrees * Math.PI) / 2 -
    ((degrees + 1) / 2) * Math.log1p((t * t) / degrees);
  return Math.exp(log);
}

/** Returns the share of Student's t distribution up to `t`. The degrees of freedom are above zero, and need not be whole. */
export function tShareBelow(t: number, degrees: number): number {
  return t < 0 ? tail(-t, degrees) : 1 - tail(t, degrees);
}

/** The share of Student's t distribution that is at least as far from zero as `t`, on both sides. */
export function tTwoSided(t: number, degrees: number): number {
  return 2 * tail(Math.abs(t), degrees);
}

/**
 * Returns the value below which a share of Student's t distribution lies, 0 < share < 1, to about 1e-13 of itself: steps of
 * Newton's within a bracket that is halved where one would leave it.
 */
export function tQuantile(share: number, degrees: number): number {
  if (share === 0.5) return 0;
  if (share < 0.5) return -aboveOf(share, degrees);
  return aboveOf(1 - share, degrees);
}

const MOST_STEPS = 100;

/** The value above which a share below a half lies. */
function aboveOf(share: number, degrees: number): number {
  let [from, to] = [0, 1];
  while (tail(to, degrees) > share) [from, to] = [to, to * 2];
  let at = (from + to) / 2;
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const over = tail(at, degrees) - share;
    if (over > 0) from = at;
    else to = at;
    const next = at + over / density(at, degrees);
    const better = next > from && next < to ? next : (from + to) / 2;
    if (Math.abs(better - at) <= 1e-14 * at) return better;
    at = better;
  }
  return at;
}
