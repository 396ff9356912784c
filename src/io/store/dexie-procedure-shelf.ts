import type { Instant } from "../../core/units/index.ts";
import type { RevisionNote, TetherlineDatabase } from "./database.ts";
import { watched } from "./dexie-rows.ts";
import type { AddedProcedure, KeptProcedure, ProcedureShelf } from "./procedure-shelf.ts";
import { freeKey, inShelfOrder, keptOf, unkeyedRow } from "./procedure-shelf.ts";
import { troubleOf } from "./store-trouble.ts";

/** Procedures in IndexedDB. */
export class DexieProcedureShelf implements ProcedureShelf {
  readonly #database: TetherlineDatabase;
  readonly #now: () => Instant;

  constructor(database: TetherlineDatabase, now: () => Instant) {
    this.#database = database;
    this.#now = now;
  }

  async procedures(): Promise<readonly KeptProcedure[]> {
    return inShelfOrder(await this.#database.procedures.toArray());
  }

  async procedure(key: string): Promise<KeptProcedure | null> {
    const row = await this.#database.procedures.get(key);
    return row ? keptOf(row) : null;
  }

  async addProcedure(
    text: string,
    importedAt: Instant = this.#now(),
    saved?: RevisionNote,
  ): Promise<AddedProcedure> {
    const { row, findings } = await unkeyedRow(text, importedAt, saved);
    if (!row) return { kind: "refused", findings };
    const { procedures } = this.#database;
    try {
      return await this.#database.transaction("rw!", procedures, async (): Promise<AddedProcedure> => {
        const namesakes = await procedures.where({ id: row.id, revision: row.revision }).toArray();
        const known = namesakes.find((one) => one.text === text);
        if (known) return { kind: "known", procedure: keptOf(known), findings };
        const keys = new Set(await procedures.where("key").startsWith(row.id).primaryKeys());
        const added = { ...row, key: freeKey(row.id, (key) => keys.has(key)) };
        await procedures.add(added);
        return { kind: "added", procedure: keptOf(added), findings };
      });
    } catch (error) {
      const reason = troubleOf(error);
      if (!reason) throw error;
      return { kind: "not-kept", reason, findings };
    }
  }

  async removeProcedure(key: string): Promise<void> {
    await this.#database.procedures.delete(key);
  }

  watchProcedures(onChange: () => void): () => void {
    return watched(() => this.#database.procedures.toArray(), onChange);
  }
}
