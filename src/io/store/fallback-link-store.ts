import type { Cursor, Settled } from "../../core/link/index.ts";
import type { ClockOffset, Entry } from "../../core/log/index.ts";
import type { WalkId } from "../../core/units/index.ts";
import type { AsideEntry, LinkRow, NewLink } from "./link-row.ts";
import type { Changed, LinkStore, Outbox } from "./link-store.ts";
import type { MemoryLinkStore } from "./memory-link-store.ts";

/** What the links need of the store of entries that they are part of. */
export interface FallbackLinkParts {
  readonly durable: LinkStore | null;
  readonly memory: MemoryLinkStore;
  /** Whether the disk is trusted. */
  readonly isDurable: () => boolean;
  /** The answer of the disk, in a list of one; `null` when it is in trouble, after which it is not trusted. */
  readonly attempt: <Answer>(ask: () => Promise<Answer>) => Promise<readonly [Answer] | null>;
  /** Copies everything of a walk to memory. */
  readonly copy: (walk: WalkId) => Promise<void>;
  /** Seals what waits for it in a walk. */
  readonly seal: (walk: WalkId) => Promise<void>;
  /** Takes note of what was changed on disk, or in memory. */
  readonly note: (walk: WalkId, changed: Changed, where: "disk" | "memory") => Promise<void>;
}

/** Links that are kept on disk while that works, and otherwise in memory, where each walk is read and sent as a whole once more. */
export class FallbackLinkStore implements LinkStore {
  readonly #parts: FallbackLinkParts;
  /** As last seen on disk. */
  #known: readonly LinkRow[] = [];
  #isInMemory = false;

  constructor(parts: FallbackLinkParts) {
    this.#parts = parts;
  }

  async all(): Promise<readonly LinkRow[]> {
    return this.#ask(async (links) => {
      const rows = await links.all();
      if (links !== this.#parts.memory) this.#known = rows;
      return rows;
    });
  }

  get(walk: WalkId): Promise<LinkRow | null> {
    return this.#ask((links) => links.get(walk));
  }

  watch(onChange: () => void): () => void {
    const ends = [this.#parts.memory.watch(onChange), this.#parts.durable?.watch(onChange)];
    return () => {
      for (const end of ends) end?.();
    };
  }

  join(joining: NewLink): Promise<LinkRow> {
    return this.#ask((links) => links.join(joining));
  }

  leave(walk: WalkId): Promise<void> {
    return this.#ask((links) => links.leave(walk));
  }

  change(walk: WalkId, change: (row: LinkRow) => LinkRow): Promise<void> {
    return this.#ask((links) => links.change(walk, change));
  }

  async outbox(walk: WalkId, limit: number): Promise<Outbox> {
    // What an earlier page left unsealed gets its seals before anything is sent.
    await this.#parts.seal(walk);
    return this.#ask((links) => links.outbox(walk, limit), walk);
  }

  unsent(walk: WalkId): Promise<number> {
    return this.#ask((links) => links.unsent(walk), walk);
  }

  settle(walk: WalkId, settled: readonly Settled[], round: number): Promise<Changed> {
    return this.#change(walk, (links) => links.settle(walk, settled, round));
  }

  takeIn(
    walk: WalkId,
    entries: readonly Entry[],
    cursor: Cursor,
    after: Cursor | null = null,
  ): Promise<Changed> {
    return this.#change(walk, (links) => links.takeIn(walk, entries, cursor, after));
  }

  setClock(walk: WalkId, clock: ClockOffset, scope: "own" | "every"): Promise<Changed> {
    return this.#change(walk, (links) => links.setClock(walk, clock, scope));
  }

  aside(walk: WalkId): Promise<readonly AsideEntry[]> {
    return this.#ask((links) => links.aside(walk));
  }

  async #change(walk: WalkId, ask: (links: LinkStore) => Promise<Changed>): Promise<Changed> {
    let where: "disk" | "memory" = "disk";
    const changed = await this.#ask((links) => {
      where = links === this.#parts.memory ? "memory" : "disk";
      return ask(links);
    }, walk);
    await this.#parts.note(walk, changed, where);
    return changed;
  }

  /** The answer of the disk, or of memory, which holds the entries of `walk` by then. */
  async #ask<Answer>(ask: (links: LinkStore) => Promise<Answer>, walk?: WalkId): Promise<Answer> {
    const { durable, memory, isDurable, attempt, copy } = this.#parts;
    if (durable && isDurable()) {
      const answer = await attempt(() => ask(durable));
      if (answer) {
        this.#isInMemory = false;
        return answer[0];
      }
    }
    if (!this.#isInMemory) {
      this.#isInMemory = true;
      const rows = durable && (await attempt(() => durable.all()));
      memory.adopt(rows?.[0] ?? this.#known);
    }
    if (walk !== undefined) await copy(walk);
    return ask(memory);
  }
}
