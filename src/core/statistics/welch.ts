import { tTwoSided } from "./student-t.ts";

/** The difference of the means of two groups, which need not be equally spread. */
export interface Welch {
  /** The mean of the second less that of the first. */
  readonly difference: number;
  readonly standardError: number;
  readonly degrees: number;
  /** The two-sided probability of so large a difference where there is none. */
  readonly p: number;
}

/** Returns the mean of some values; not a number without any. */
export function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

/**
 * Compares two groups by the test of Welch (1947), with degrees of freedom by Satterthwaite (1946). `null` when a group has
 * fewer than two values or when neither has any spread.
 */
export function welch(a: readonly number[], b: readonly number[]): Welch | null {
  if (a.length < 2 || b.length < 2) return null;
  const [first, second] = [squaredError(a), squaredError(b)];
  const both = first + second;
  if (!(both > 0)) return null;
  const difference = mean(b) - mean(a);
  const standardError = Math.sqrt(both);
  const degrees = both ** 2 / (first ** 2 / (a.length - 1) + second ** 2 / (b.length - 1));
  return { difference, standardError, degrees, p: tTwoSided(difference / standardError, degrees) };
}

/** The square of the standard error of a mean. */
function squaredError(values: readonly number[]): number {
  const middle = mean(values);
  const squares = values.reduce((sum, value) => sum + (value - middle) ** 2, 0);
  return squares / (values.length - 1) / values.length;
}
