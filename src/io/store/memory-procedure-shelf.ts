import type { Instant } from "../../core/units/index.ts";
import { Listeners } from "../../core/units/index.ts";
import type { ProcedureRow, RevisionNote } from "./database.ts";
import type { AddedProcedure, KeptProcedure, ProcedureShelf } from "./procedure-shelf.ts";
import { freeKey, inShelfOrder, keptOf, unkeyedRow } from "./procedure-shelf.ts";

/** Procedures in memory, where nothing can be stored. */
export class MemoryProcedureShelf implements ProcedureShelf {
  readonly #rows = new Map<string, ProcedureRow>();
  readonly #listeners = new Listeners();
  readonly #now: () => Instant;

  constructor(now: () => Instant) {
    this.#now = now;
  }

  async procedures(): Promise<readonly KeptProcedure[]> {
    return inShelfOrder([...this.#rows.values()]);
  }

  async procedure(key: string): Promise<KeptProcedure | null> {
    const row = this.#rows.get(key);
    return row ? keptOf(row) : null;
  }

  async addProcedure(
    text: string,
    importedAt: Instant = this.#now(),
    saved?: RevisionNote,
  ): Promise<AddedProcedure> {
    const { row, findings } = await unkeyedRow(text, importedAt, saved);
    if (!row) return { kind: "refused", findings };
    const known = [...this.#rows.values()].find(
      (one) => one.id === row.id && one.revision === row.revision && one.text === text,
    );
    if (known) return { kind: "known", procedure: keptOf(known), findings };
    const added = { ...row, key: freeKey(row.id, (key) => this.#rows.has(key)) };
    this.#rows.set(added.key, added);
    this.#listeners.tellSoon();
    return { kind: "added", procedure: keptOf(added), findings };
  }

  async removeProcedure(key: string): Promise<void> {
    this.#rows.delete(key);
    this.#listeners.tellSoon();
  }

  watchProcedures(onChange: () => void): () => void {
    return this.#listeners.add(onChange);
  }
}
