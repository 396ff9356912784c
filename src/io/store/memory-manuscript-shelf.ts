import type { Instant } from "../../core/units/index.ts";
import { Listeners } from "../../core/units/index.ts";
import type { KeptAs, ManuscriptRow, ManuscriptShelf, ManuscriptToKeep } from "./manuscript-shelf.ts";
import { lastKeptFirst, nextRow } from "./manuscript-shelf.ts";

/** Manuscripts in memory, where nothing can be stored. */
export class MemoryManuscriptShelf implements ManuscriptShelf {
  readonly #rows = new Map<string, ManuscriptRow>();
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

  async removeManuscript(key: string): Promise<void> {
    this.#rows.delete(key);
    this.#listeners.tellSoon();
  }

  watchManuscripts(onChange: () => void): () => void {
    return this.#listeners.add(onChange);
  }
}
