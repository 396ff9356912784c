import { logGamma } from "./log-gamma.ts";

const TINY = 1e-300;
const CLOSE = 4e-16;
const MOST_TERMS = 100_000;

/**
 * Returns the regularised incomplete beta function I_x(a, b), for 0 ≤ x ≤ 1 and a, b above zero, by the continued fraction
 * (Olver et al., NIST Handbook of Mathematical Functions, 8.17.22) in the form of Lentz (1976).
 */
export function incompleteBeta(x: number, a: number, b: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  // The fraction converges quickly on this side of the mean only.
  return x <= (a + 1) / (a + b + 2) ? lowerPart(x, a, b) : 1 - lowerPart(1 - x, b, a);
}

function lowerPart(x: number, a: number, b: number): number {
  const logFront =
    logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log1p(-x) - Math.log(a);
  return Math.exp(logFront) * fraction(x, a, b);
}

const awayFromZero = (value: number) => (Math.abs(value) < TINY ? TINY : value);

function fraction(x: number, a: number, b: number): number {
  let c = 1;
  let d = 1 / awayFromZero(1 - ((a + b) * x) / (a + 1));
  let value = d;
  const step = (term: number): number => {
    d = 1 / awayFromZero(1 + term * d);
    c = awayFromZero(1 + term / c);
    value *= d * c;
    return d * c;
  };
  for (let m = 1; m <= MOST_TERMS; m += 1) {
    step((m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m)));
    const factor = step((-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1)));
    if (Math.abs(factor - 1) < CLOSE) break;
  }
  return value;
}
