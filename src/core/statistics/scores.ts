/**
 * Returns the continuous ranked probability score of a sample against what came true, in the unit of both; less is better. It is
 * E|X − y| − E|X − X′|/2 (Gneiting & Raftery 2007, eq. 20). `sorted` is in rising order; not a number when it is empty.
 */
export function crps(sorted: ArrayLike<number>, truth: number): number {
  const count = sorted.length;
  let off = 0;
  let pairs = 0;
  for (let at = 0; at < count; at += 1) {
    const value = sorted[at] ?? Number.NaN;
    off += Math.abs(value - truth);
    // The sum of |X − X′| over all pairs, from the order alone.
    pairs += (2 * at + 1 - count) * value;
  }
  return off / count - pairs / (count * count);
}

/** Returns the score of Brier (1950): the mean square of what was said less what came true; `null` without any. Less is better. */
export function brier(
  said: readonly { readonly chance: number; readonly cameTrue: boolean }[],
): number | null {
  if (said.length === 0) return null;
  return said.reduce((sum, { chance, cameTrue }) => sum + (chance - Number(cameTrue)) ** 2, 0) / said.length;
}
