import type { Remark } from "../../core/remarks/index.ts";
import type { TetherlineDatabase } from "./database.ts";
import { watched } from "./dexie-rows.ts";
import type { AddedRemarks, RemarkStore } from "./remark-store.ts";
import { remarkKey } from "./remark-store.ts";
import { troubleOf } from "./store-trouble.ts";

/** Remarks in IndexedDB. */
export class DexieRemarkStore implements RemarkStore {
  readonly #database: TetherlineDatabase;

  constructor(database: TetherlineDatabase) {
    this.#database = database;
  }

  async remarks(procedure: string | null): Promise<readonly Remark[]> {
    const table = this.#database.remarks;
    const rows = await (procedure === null ? table : table.where("procedure").equals(procedure)).toArray();
    return rows.map(({ remark }) => remark);
  }

  async addRemarks(remarks: readonly Remark[]): Promise<AddedRemarks> {
    const table = this.#database.remarks;
    const rows = new Map(
      remarks.map((remark) => [
        remarkKey(remark),
        { key: remarkKey(remark), procedure: remark.procedure, remark },
      ]),
    );
    try {
      return await this.#database.transaction("rw!", table, async (): Promise<AddedRemarks> => {
        const known = new Set(
          await table
            .where("key")
            .anyOf([...rows.keys()])
            .primaryKeys(),
        );
        const fresh = [...rows.values()].filter(({ key }) => !known.has(key));
        await table.bulkAdd(fresh);
        return { kind: "kept", added: fresh.length, known: remarks.length - fresh.length };
      });
    } catch (error) {
      const reason = troubleOf(error);
      if (!reason) throw error;
      return { kind: "not-kept", reason };
    }
  }

  watchRemarks(onChange: () => void): () => void {
    return watched(() => this.#database.remarks.count(), onChange);
  }
}
