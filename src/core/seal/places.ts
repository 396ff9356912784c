import type { Checkpoint } from "./checkpoint.ts";

/** Where the leaf of each entry stands in the tree of a checkpoint, from 0: by source, then by number. `null` for what it did not hold. */
export function placesIn({ held }: Checkpoint): (source: string, number: number) => number | null {
  const starts = new Map<string, number>();
  let start = 0;
  for (const source of [...held.keys()].sort()) {
    starts.set(source, start);
    for (const [first, last] of held.get(source) ?? []) start += last - first + 1;
  }
  return (source, number) => {
    let place = starts.get(source) ?? 0;
    for (const [first, last] of held.get(source) ?? []) {
      if (number >= first && number <= last) return place + number - first;
      place += last - first + 1;
    }
    return null;
  };
}

/** The numbers of a source that a checkpoint held and that are not among these, as ranges; empty for none. */
export function rangesWithout({ held }: Checkpoint, source: string, numbers: readonly number[]): string {
  const rest: string[] = [];
  const kept = numbers.toSorted((a, b) => a - b);
  const add = (first: number, last: number) => {
    if (first <= last) rest.push(first === last ? `${first}` : `${first}-${last}`);
  };
  for (const [first, last] of held.get(source) ?? []) {
    let from = first;
    for (const number of kept) {
      if (number < from || number > last) continue;
      add(from, number - 1);
      from = number + 1;
    }
    add(from, last);
  }
  return rest.join(",");
}
