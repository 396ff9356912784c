import type { Instant } from "../../core/units/index.ts";
import type { TetherlineDatabase } from "./database.ts";
import { halfTypedKey } from "./database.ts";
import { watched } from "./dexie-rows.ts";
import type {
  HalfTyped,
  KeptAs,
  ManuscriptRow,
  ManuscriptShelf,
  ManuscriptToKeep,
} from "./manuscript-shelf.ts";
import { lastKeptFirst, nextRow } from "./manuscript-shelf.ts";
import { troubleOf } from "./store-trouble.ts";

/** Manuscripts in IndexedDB. */
export class DexieManuscriptShelf implements ManuscriptShelf {
  readonly #database: TetherlineDatabase;
  readonly #now: () => Instant;

  constructor(database: TetherlineDatabase, now: () => Instant) {
    this.#database = database;
    this.#now = now;
  }

  async manuscripts(): Promise<readonly ManuscriptRow[]> {
    return lastKeptFirst(await this.#database.manuscripts.toArray());
  }

  async manuscript(key: string): Promise<ManuscriptRow | null> {
    return (await this.#database.manuscripts.get(key)) ?? null;
  }

  async keepManuscript(kept: ManuscriptToKeep, basedOn: number): Promise<KeptAs> {
    const { manuscripts } = this.#database;
    try {
      return await this.#database.transaction("rw!", manuscripts, async (): Promise<KeptAs> => {
        const before = await manuscripts.get(kept.key);
        if (before && before.version !== basedOn) return { kind: "overtaken", by: before };
        // One that is gone was thrown away, or its store was: what a page still has is kept again.
        const row = nextRow(kept, before, this.#now());
        await manuscripts.put(row);
        return { kind: "kept", version: row.version };
      });
    } catch (error) {
      const reason = troubleOf(error);
      if (!reason) throw error;
      return { kind: "not-kept", reason };
    }
  }

  async halfTyped(key: string): Promise<HalfTyped | null> {
    const row = await this.#database.device.get(halfTypedKey(key));
    return row && typeof row.value === "object" && "field" in row.value ? row.value : null;
  }

  async keepHalfTyped(key: string, typed: HalfTyped | null): Promise<void> {
    const { device } = this.#database;
    try {
      if (typed) await device.put({ key: halfTypedKey(key), value: typed });
      else await device.delete(halfTypedKey(key));
    } catch (error) {
      if (!troubleOf(error)) throw error;
    }
  }

  async removeManuscript(key: string): Promise<void> {
    const { manuscripts, device } = this.#database;
    await this.#database.transaction("rw!", manuscripts, device, async () => {
      await Promise.all([manuscripts.delete(key), device.delete(halfTypedKey(key))]);
    });
  }

  watchManuscripts(onChange: () => void): () => void {
    return watched(() => this.#database.manuscripts.toArray(), onChange);
  }
}
