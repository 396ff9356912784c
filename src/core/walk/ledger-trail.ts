import type { Ledger } from "./ledger.ts";

/** The ledgers behind so many of the newest entries are all kept: what comes in late, or is struck, mostly stands among them. */
const NEWEST = 64;

/** Behind those, one ledger for so many entries is kept. */
const INTERVAL = 256;

/** A ledger that was kept, and how many entries lead to it. */
interface KeptLedger {
  readonly length: number;
  readonly ledger: Ledger | null;
}

/**
 * The ledgers on the way through a log, so that folding again can begin in its middle: all of the newest, older ones at
 * intervals, so that a long log does not need room for as many ledgers as it has entries.
 */
export class LedgerTrail {
  readonly #kept = new Map<number, Ledger | null>();
  #length = 0;

  /** The ledger behind all entries so far; `null` before a walk was opened. */
  get last(): Ledger | null {
    return this.#kept.get(this.#length) ?? null;
  }

  /** Adds the ledger behind one more entry. */
  push(ledger: Ledger | null): void {
    this.#length += 1;
    this.#kept.set(this.#length, ledger);
    const old = this.#length - NEWEST;
    if (old % INTERVAL !== 0) this.#kept.delete(old);
  }

  /** Forgets what lies behind the first `length` entries, and goes back to the last ledger kept up to there, which is returned. */
  goBackTo(length: number): KeptLedger {
    let at = Math.min(length, this.#length);
    while (at > 0 && !this.#kept.has(at)) at -= 1;
    for (let behind = at + 1; behind <= this.#length; behind += 1) this.#kept.delete(behind);
    this.#length = at;
    return { length: at, ledger: this.last };
  }
}
