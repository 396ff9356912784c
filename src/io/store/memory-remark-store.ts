import type { Remark } from "../../core/remarks/index.ts";
import { Listeners } from "../../core/units/index.ts";
import type { AddedRemarks, RemarkStore } from "./remark-store.ts";
import { remarkKey } from "./remark-store.ts";

/** Remarks in memory, where nothing can be stored. */
export class MemoryRemarkStore implements RemarkStore {
  readonly #remarks = new Map<string, Remark>();
  readonly #listeners = new Listeners();

  async remarks(procedure: string | null): Promise<readonly Remark[]> {
    return [...this.#remarks.values()].filter(
      (remark) => procedure === null || remark.procedure === procedure,
    );
  }

  async addRemarks(remarks: readonly Remark[]): Promise<AddedRemarks> {
    const before = this.#remarks.size;
    for (const remark of remarks) this.#remarks.set(remarkKey(remark), remark);
    const added = this.#remarks.size - before;
    if (added > 0) this.#listeners.tellSoon();
    return { kind: "kept", added, known: remarks.length - added };
  }

  watchRemarks(onChange: () => void): () => void {
    return this.#listeners.add(onChange);
  }
}
