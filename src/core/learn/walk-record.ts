import type { Instant } from "../units/index.ts";
import type { Folded, Ledger } from "../walk/index.ts";
import { foldLog } from "../walk/index.ts";

/** A walk that was opened, with everything that its log tells. */
export interface WalkRecord {
  readonly folded: Folded;
  readonly ledger: Ledger;
  /** The instant of PET 0, or of the opening while the clock was not started. */
  readonly began: Instant;
}

/**
 * Returns the walks of several folded logs, each once however many logs tell of it, in order of when they began (by their ids
 * when at once): the entries of one walk from several devices count together. A log that opens no walk gives none.
 */
export function walkRecords(logs: Iterable<Folded>): readonly WalkRecord[] {
  const kept = new Map<string, Folded>();
  for (const folded of logs) {
    if (!folded.ledger) continue;
    const id = folded.ledger.opened.walk;
    const known = kept.get(id);
    kept.set(id, known ? foldLog([...known.entries, ...folded.entries]) : folded);
  }
  return [...kept.values()]
    .flatMap((folded): WalkRecord[] => {
      const { ledger } = folded;
      return ledger ? [{ folded, ledger, began: ledger.petZero ?? ledger.opened.at }] : [];
    })
    .sort((a, b) => a.began - b.began || (a.ledger.opened.walk < b.ledger.opened.walk ? -1 : 1));
}
