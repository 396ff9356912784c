import { comparedText } from "./canonical-text.ts";
import type { Entry } from "./entry.ts";
import type { HybridTime } from "./hybrid-clock.ts";
import type { WireEntry } from "./wire-entry.ts";

/**
 * The part of an entry that never changes ([SEL1]): all of its attributes but the stamp. The stamp is the `hlc` that the
 * entry has after a correction and every attribute that begins with `hub`; the seal is neither. The `hlc` of a statement
 * is the one that the entry was made with.
 */
export type Statement = Readonly<Record<string, unknown>>;

const isOutsideStatement = (attribute: string): boolean =>
  attribute === "seal" || attribute === "hlcmade" || attribute.startsWith("hub");

/** The statement of an entry, its attributes in the order in which they were written. */
export function statementOf(wire: WireEntry): Statement {
  const kept = Object.entries(wire).filter(([attribute]) => !isOutsideStatement(attribute));
  return { ...Object.fromEntries(kept), hlc: wire.hlcmade ?? wire.hlc };
}

/**
 * The same entry under another hybrid time. The attribute `hlcmade` keeps the time that the entry was made with, however
 * often its time is replaced. An entry that gets its original time back loses the attribute and equals its first form.
 */
export function withStamp(entry: Entry, hlc: HybridTime): Entry {
  const { hlcmade, ...wire } = entry.wire;
  const made = hlcmade ?? wire.hlc;
  return { ...entry, hlc, wire: made === hlc ? { ...wire, hlc } : { ...wire, hlc, hlcmade: made } };
}

/**
 * How two entries of one `source` and `id` stand to each other:
 * - `identical`: they agree in everything, whatever the order of their keys;
 * - `restamped`: they are the same statement under different stamps or seals;
 * - `retimed`: they agree in everything but their hybrid times, and nothing shows that one was made from the other. Versions
 *   that did not write `hlcmade` stamped entries anew in this way;
 * - `different`: they say different things.
 */
export type Likeness = "identical" | "restamped" | "retimed" | "different";

/** Decides whether two entries of one `source` and `id` are the same; nothing else in the program decides it. */
export function likenessOf({ wire: a }: Pick<Entry, "wire">, { wire: b }: Pick<Entry, "wire">): Likeness {
  // Most often not even the order of the keys differs, which is found out more quickly.
  if (a === b || JSON.stringify(a) === JSON.stringify(b)) return "identical";
  if (comparedText(a) === comparedText(b)) return "identical";
  const [one, other] = [statementOf(a), statementOf(b)];
  if (comparedText(one) === comparedText(other)) return "restamped";
  return comparedText({ ...one, hlc: "" }) === comparedText({ ...other, hlc: "" }) ? "retimed" : "different";
}

/** Whether two entries of one `source` and `id` are the same statement ([SEL8]): then they do not conflict. */
export function isSameStatement(a: Pick<Entry, "wire">, b: Pick<Entry, "wire">): boolean {
  const likeness = likenessOf(a, b);
  return likeness === "identical" || likeness === "restamped";
}
