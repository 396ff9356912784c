import type { Entry } from "../../core/log/index.ts";
import { keyOf, likenessOf } from "../../core/log/index.ts";

/** Entries from elsewhere, compared with what a store has. */
export interface Sorted {
  /** Not here yet, each once, in the order given. */
  readonly fresh: readonly Entry[];
  /** How many are here already, restamped ones included. */
  readonly known: number;
  /** Those that are here under another stamp. */
  readonly restamped: readonly Entry[];
  readonly conflicting: readonly Entry[];
}

/** Sorts entries of one walk into new, known and conflicting; of two that conflict among themselves the first is new. */
export function sortedOut(entries: readonly Entry[], here: (key: string) => Entry | undefined): Sorted {
  const fresh = new Map<string, Entry>();
  const conflicting: Entry[] = [];
  const restamped: Entry[] = [];
  let known = 0;
  for (const entry of entries) {
    const key = keyOf(entry);
    const other = here(key) ?? fresh.get(key);
    if (!other) {
      fresh.set(key, entry);
      continue;
    }
    const likeness = likenessOf(other, entry);
    if (likeness === "restamped") restamped.push(entry);
    if (likeness === "identical" || likeness === "restamped") known += 1;
    else conflicting.push(entry);
  }
  return { fresh: [...fresh.values()], known, restamped, conflicting };
}
