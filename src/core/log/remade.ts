import type { Entry } from "./entry.ts";
import { keyOf } from "./entry.ts";
import type { HybridTime } from "./hybrid-clock.ts";
import { sequenceText } from "./sequence-text.ts";
import { statementOf } from "./statement.ts";
import type { WireEntry } from "./wire-entry.ts";

/** Where an entry that is made again is put. */
export interface NewPlace {
  readonly source: string;
  /** Its number in the sequence of that source, from 1. */
  readonly number: number;
  readonly hlc: HybridTime;
}

/** Attributes that tie an entry to the chain of its source ([SEL2]); an entry of another source has its own. */
const CHAINED: ReadonlySet<string> = new Set(["prior", "sealkey"]);

/**
 * Returns an entry of `source` that repeats an entry whose own `source` and `id` cannot be used. It is a separate entry with
 * its own statement: the attribute `remadefrom` names the other one by `source` and `id`, with a
 * blank between.
 */
export function remade(entry: Entry, { source, number, hlc }: NewPlace): Entry {
  const said = Object.entries(statementOf(entry.wire)).filter(([attribute]) => !CHAINED.has(attribute));
  const sequence = sequenceText(number);
  const wire: WireEntry = {
    ...(Object.fromEntries(said) as WireEntry),
    source,
    id: sequence,
    sequence,
    hlc,
    remadefrom: keyOf(entry),
  };
  return { ...entry, hlc, wire };
}
