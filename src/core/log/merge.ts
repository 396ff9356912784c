import type { Entry } from "./entry.ts";
import { compareEntries, keyOf } from "./entry.ts";

/** A set of entries in their order. */
export interface MergedEntries {
  /** Each entry once, in order ([LOG3]). */
  readonly ordered: readonly Entry[];
  /** Entries whose `source` and `id` another, different entry has too; they do not count. */
  readonly conflicting: readonly Entry[];
}

/** A JSON text that does not depend on the order in which keys were written. */
function canonicalText(value: unknown): string {
  return JSON.stringify(value, (_key, part: unknown) =>
    typeof part === "object" && part !== null && !Array.isArray(part)
      ? Object.fromEntries(Object.entries(part).sort(([a], [b]) => (a < b ? -1 : 1)))
      : part,
  );
}

/** Whether two entries say exactly the same, whatever the order of their keys. */
export function isSameEntry(a: Entry, b: Entry): boolean {
  return a.wire === b.wire || canonicalText(a.wire) === canonicalText(b.wire);
}

/** Whether two entries differ in their hybrid times at most: one of them was stamped anew. */
export function isSameButStamp(a: Entry, b: Entry): boolean {
  return canonicalText({ ...a.wire, hlc: "" }) === canonicalText({ ...b.wire, hlc: "" });
}

/**
 * Puts entries from any number of devices together: duplicates fall out, the rest is ordered. Of two different entries
 * with the same `source` and `id` the one whose canonical text sorts first counts, so that every device takes the same.
 */
export function mergeEntries(entries: Iterable<Entry>): MergedEntries {
  const chosen = new Map<string, Entry>();
  const conflicting = new Map<string, Entry>();
  for (const entry of entries) {
    const key = keyOf(entry);
    const other = chosen.get(key);
    if (!other || other.wire === entry.wire) {
      chosen.set(key, entry);
      continue;
    }
    const [text, otherText] = [canonicalText(entry.wire), canonicalText(other.wire)];
    if (text === otherText) continue;
    chosen.set(key, text < otherText ? entry : other);
    conflicting.set(`${key} ${text < otherText ? otherText : text}`, text < otherText ? other : entry);
  }
  return {
    ordered: [...chosen.values()].sort(compareEntries),
    conflicting: [...conflicting].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, entry]) => entry),
  };
}
