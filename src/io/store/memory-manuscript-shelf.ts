import type { Instant } from "../../core/units/index.ts";
import { Listeners } from "../../core/units/index.ts";
import type {
  HalfTyped,
  KeptAs,
  ManuscriptRow,
  ManuscriptShelf,
  ManuscriptToKeep,
} from "./manuscript-shelf.ts";
import { lastKeptFirst, nextRow } from "./manuscript-shelf.ts";

/** Manuscripts in memory, where nothing can be stored. */
export class MemoryManuscriptShelf implements ManuscriptShelf {
  readonly #rows = new Map<string, ManuscriptRow>();
  readonly #halfTyped = new Map<string, HalfTyped>();
  readonly #listeners = new Listeners();
  readonly #now: () => Instant;

  constructor(now: () => Instant) {
    this.#now = now;
  }

  async manuscripts(): Promise<readonly ManuscriptRow[]> {
    return lastKeptFirst([...this.#rows.values()]);
  }

  async manuscript(key: string): Promise<ManuscriptRow | null> {
    return this.#rows.get(key) ?? null;
  }

  async keepManuscript(kept: ManuscriptToKeep, basedOn: number): Promise<KeptAs> {
    const before = this.#rows.get(kept.key);
    if (before && before.version !== basedOn) return { kind: "overtaken", by: before };
    const row = nextRow(kept, before, this.#now());
    this.#rows.set(row.key, row);
    this.#listeners.tellSoon();
    return { kind: "kept", version: row.version };
  }

  async halfTyped(key: string): Promise<HalfTyped | null> {
    return this.#halfTyped.get(key) ?? null;
  }

  async keepHalfTyped(key: string, typed: HalfTyped | null): Promise<void> {
    if (typed) this.#halfTyped.set(key, typed);
    else this.#halfTyped.delete(key);
  }

  async removeManuscript(key: string): Promise<void> {
    this.#halfTyped.delete(key);
    this.#rows.delete(key);
    this.#listeners.tellSoon();
  }

  watchManuscripts(onChange: () => void): () => void {
    return this.#listeners.add(onChange);
  }
}
