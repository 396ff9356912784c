import { bisectLeft } from "d3-array";

/**
 * The entries of `before` that may stay where they are when it is brought into the order of `after`: a longest common subsequence,
 * the same one every time, so that the fewest entries move. Each entry stands once in each list; O(n log n).
 */
export function keptInOrder(before: readonly string[], after: readonly string[]): ReadonlySet<string> {
  const placeBefore = new Map(before.map((entry, place) => [entry, place]));
  const entries = after.filter((entry) => placeBefore.has(entry));
  /** For each length, the run of that length that ends earliest: where it ends, and its last entry. */
  const ends: number[] = [];
  const lasts: string[] = [];
  const previous = new Map<string, string | undefined>();
  for (const entry of entries) {
    const place = placeBefore.get(entry) ?? 0;
    const length = bisectLeft(ends, place);
    ends[length] = place;
    lasts[length] = entry;
    previous.set(entry, lasts[length - 1]);
  }
  const kept = new Set<string>();
  for (let entry = lasts.at(-1); entry !== undefined; entry = previous.get(entry)) kept.add(entry);
  return kept;
}
