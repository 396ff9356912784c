/** How long is waited between attempts. */
export interface Backoff {
  /** The longest wait before the second attempt, in ms. */
  readonly first: number;
  /** The longest wait before any attempt, in ms. */
  readonly longest: number;
}

/**
 * How long to wait after so many failures in a row, in ms: uniform over the upper half of a bound that doubles up to the
 * longest, so that many devices that lost the same hub do not come back in step. `random` is in [0, 1).
 */
export function waitAfter(failures: number, random: number, { first, longest }: Backoff): number {
  const bound = Math.min(longest, first * 2 ** Math.min(30, Math.max(0, failures - 1)));
  return Math.round(bound / 2 + (random * bound) / 2);
}
