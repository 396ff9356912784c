const ROOT_TAU = Math.sqrt(2 * Math.PI);

/** The density of the standard normal distribution. */
export function normalDensity(z: number): number {
  return Math.exp((-z * z) / 2) / ROOT_TAU;
}

/** Where the series in z is left for the continued fraction in 1/z. */
const FAR = 3;

/**
 * Returns the density of the standard normal distribution over the share above `z` (the inverse of Mills' ratio), to about
 * 1e-13: by the series of Marsaglia (2004) for the share, and far out by Laplace's continued fraction, where the share itself
 * would vanish.
 */
export function normalHazard(z: number): number {
  if (z > FAR) return laplaceFraction(z);
  return normalDensity(z) / (0.5 - centralShare(z));
}

function laplaceFraction(z: number): number {
  let value = z;
  for (let term = 200; term >= 1; term -= 1) value = z + term / value;
  return value;
}

/** The share between zero and `z`, with its sign. */
function centralShare(z: number): number {
  if (z < -8) return -0.5;
  let term = z;
  let sum = z;
  for (let odd = 3; Math.abs(term) > 1e-17 * Math.abs(sum); odd += 2) {
    term *= (z * z) / odd;
    sum += term;
  }
  return normalDensity(z) * sum;
}

/** The value above which a tenth of the standard normal distribution lies. */
export const NORMAL_NINE_TENTHS = 1.2815515655446004;

/** The value between which and its opposite 95 % of the standard normal distribution lie. */
export const NORMAL_95 = 1.959963984540054;
