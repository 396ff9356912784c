/** With more places than this only a spanning tree is looked at: 2^12 × 12 sums are a few milliseconds. */
const MOST_PLACES = 12;

/**
 * The least time on the way for whoever begins at place 0 and comes to all the others, and ends at `end`: 0 again,
 * another place, or `null` for any. Times are row by row, and no way is longer than one with a stop between. Exact to
 * twelve places (Held and Karp 1962); with more no more than the least tree that joins them.
 */
export function shortestTour(times: readonly (readonly number[])[], end: number | null): number {
  const count = times.length;
  if (count <= 1) return 0;
  if (count > MOST_PLACES) return leastTree(times);
  const others = count - 1;
  const all = (1 << others) - 1;
  const least = new Float64Array((all + 1) * count).fill(Number.POSITIVE_INFINITY);
  const time = (from: number, to: number) => times[from]?.[to] ?? Number.POSITIVE_INFINITY;
  least[0] = 0;
  for (let visited = 0; visited <= all; visited += 1)
    for (let at = 0; at < count; at += 1) {
      const spent = least[visited * count + at] as number;
      if (spent === Number.POSITIVE_INFINITY) continue;
      for (let next = 1; next < count; next += 1) {
        const bit = 1 << (next - 1);
        if ((visited & bit) !== 0) continue;
        const slot = (visited | bit) * count + next;
        least[slot] = Math.min(least[slot] as number, spent + time(at, next));
      }
    }
  let best = Number.POSITIVE_INFINITY;
  for (let last = 1; last < count; last += 1)
    if (end === null || end === 0 || end === last)
      best = Math.min(best, (least[all * count + last] as number) + (end === 0 ? time(last, 0) : 0));
  return best;
}

/** The time of the least tree that joins all places (Prim 1957). Times are row by row. */
export function leastTree(times: readonly (readonly number[])[]): number {
  const nearest = times.map((_, place) => times[0]?.[place] ?? Number.POSITIVE_INFINITY);
  const left = new Set(times.keys());
  left.delete(0);
  let sum = 0;
  while (left.size > 0) {
    const next = [...left].reduce((best, place) =>
      (nearest[place] ?? 0) < (nearest[best] ?? 0) ? place : best,
    );
    left.delete(next);
    sum += nearest[next] ?? 0;
    for (const place of left)
      nearest[place] = Math.min(nearest[place] ?? 0, times[next]?.[place] ?? Number.POSITIVE_INFINITY);
  }
  return sum;
}
