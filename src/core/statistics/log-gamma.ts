const G = 7;

/** The coefficients for g = 7 and nine terms (Lanczos 1964, as computed by Godfrey 2001). */
const COEFFICIENTS = [
  0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059,
  12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
] as const;

const HALF_LOG_TAU = Math.log(2 * Math.PI) / 2;

/** Returns ln Γ(x) for x above zero, to about 1e-14. */
export function logGamma(x: number): number {
  // Close to zero the sum loses digits, which the recurrence does not.
  if (x < 0.5) return logGamma(x + 1) - Math.log(x);
  const z = x - 1;
  const [first, ...others] = COEFFICIENTS;
  const sum = others.reduce<number>((total, term, at) => total + term / (z + at + 1), first);
  const base = z + G + 0.5;
  return HALF_LOG_TAU + (z + 0.5) * Math.log(base) - base + Math.log(sum);
}
