import { comparedText } from "./canonical-text.ts";
import type { Entry } from "./entry.ts";
import { compareEntries, keyOf } from "./entry.ts";
import { likenessOf, statementOf } from "./statement.ts";

/** A set of entries in their order. */
export interface MergedEntries {
  /** Each entry once, in order ([LOG3]). */
  readonly ordered: readonly Entry[];
  /** Entries that share `source` and `id` with a different entry that counts; these do not count. */
  readonly conflicting: readonly Entry[];
}

/**
 * Puts entries from any number of devices together. Of several entries with the same `source` and `id` the one whose
 * canonical text sorts first counts, so that every device takes the same one. Those that make the same statement under
 * another stamp are the same entry and are dropped; one entry of each other statement is conflicting.
 */
export function mergeEntries(entries: Iterable<Entry>): MergedEntries {
  const chosen = new Map<string, Entry>();
  /** All forms of those that came in more than one, by key. */
  const forms = new Map<string, Entry[]>();
  for (const entry of entries) {
    const key = keyOf(entry);
    const first = chosen.get(key);
    if (!first) {
      chosen.set(key, entry);
      continue;
    }
    const known = forms.get(key) ?? [first];
    if (known.some((one) => likenessOf(one, entry) === "identical")) continue;
    forms.set(key, [...known, entry]);
  }
  const conflicting: Entry[] = [];
  for (const key of [...forms.keys()].sort()) {
    const [counts, ...others] = oneOfEachStatement(forms.get(key) ?? []);
    if (counts) chosen.set(key, counts);
    conflicting.push(...others);
  }
  return { ordered: [...chosen.values()].sort(compareEntries), conflicting };
}

/** The first entry of each statement, all in the order of their canonical texts. */
function oneOfEachStatement(forms: readonly Entry[]): readonly Entry[] {
  const statements = new Map<string, Entry>();
  for (const { entry } of forms.map((entry) => ({ entry, text: comparedText(entry.wire) })).sort(byText)) {
    const statement = comparedText(statementOf(entry.wire));
    if (!statements.has(statement)) statements.set(statement, entry);
  }
  return [...statements.values()];
}

const byText = (a: { readonly text: string }, b: { readonly text: string }) => (a.text < b.text ? -1 : 1);
