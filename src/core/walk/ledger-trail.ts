import type { Ledger } from "./ledger.ts";

/**
 * How many of the most recent ledgers are all kept. Late entries and struck entries are mostly among the most recent.
 */
const NEWEST = 64;

/** Among older ledgers, one is kept for each interval of this many entries. */
const INTERVAL = 256;

/** A kept ledger, and the number of entries that lead to it. */
interface KeptLedger {
  readonly length: number;
  readonly ledger: Ledger | null;
}

/**
 * Intermediate ledgers of a log, from which a fold can resume in the middle. It keeps all recent ledgers and older
 * ones at intervals, so that a long log does not need memory for one ledger per entry.
 */
export class LedgerTrail {
  readonly #kept = new Map<number, Ledger | null>();
  #length = 0;

  /** The ledger after all entries so far; `null` before a walk was opened. */
  get last(): Ledger | null {
    return this.#kept.get(this.#length) ?? null;
  }

  /** Adds the ledger that results from one more entry. */
  push(ledger: Ledger | null): void {
    this.#length += 1;
    this.#kept.set(this.#length, ledger);
    const old = this.#length - NEWEST;
    if (old % INTERVAL !== 0) this.#kept.delete(old);
  }

  /**
   * Goes back to the last kept ledger that results from at most `length` entries, forgets all later ones, and returns
   * it.
   */
  goBackTo(length: number): KeptLedger {
    let at = Math.min(length, this.#length);
    while (at > 0 && !this.#kept.has(at)) at -= 1;
    for (let behind = at + 1; behind <= this.#length; behind += 1) this.#kept.delete(behind);
    this.#length = at;
    return { length: at, ledger: this.last };
  }
}
