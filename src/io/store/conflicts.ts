import type { Entry } from "../../core/log/index.ts";
import { isSameEntry, keyOf } from "../../core/log/index.ts";

/** Entries from elsewhere, held against what a store has. */
export interface Sorted {
  /** Not here yet, each once, in the order given. */
  readonly fresh: readonly Entry[];
  readonly known: number;
  readonly conflicting: readonly Entry[];
}

/** Sorts entries of one walk into new, known and conflicting; of two that conflict among themselves the first is new. */
export function sortedOut(entries: readonly Entry[], here: (key: string) => Entry | undefined): Sorted {
  const fresh = new Map<string, Entry>();
  const conflicting: Entry[] = [];
  let known = 0;
  for (const entry of entries) {
    const key = keyOf(entry);
    const other = here(key) ?? fresh.get(key);
    if (!other) fresh.set(key, entry);
    else if (isSameEntry(other, entry)) known += 1;
    else conflicting.push(entry);
  }
  return { fresh: [...fresh.values()], known, conflicting };
}
