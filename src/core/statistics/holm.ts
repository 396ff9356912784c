/**
 * Returns the adjusted probabilities of several tests, each in its place (Holm 1979): those up to a level may all be claimed at
 * once, and the chance that any of them is wrong is at most that level.
 */
export function holm(probabilities: readonly number[]): readonly number[] {
  const order = [...probabilities.keys()].sort((a, b) => (probabilities[a] ?? 1) - (probabilities[b] ?? 1));
  const adjusted = new Array<number>(probabilities.length).fill(1);
  let most = 0;
  for (const [rank, at] of order.entries()) {
    most = Math.max(most, Math.min(1, (probabilities.length - rank) * (probabilities[at] ?? 1)));
    adjusted[at] = most;
  }
  return adjusted;
}
