import { Dexie, liveQuery } from "dexie";
import type { Draft, Entry, EntryPage, TakenIn } from "../../core/log/index.ts";
import { keyOf, readEntry, UnreadableEntryError } from "../../core/log/index.ts";
import type { Instant, WalkId } from "../../core/units/index.ts";
import { sortedOut } from "./conflicts.ts";
import type { EntryRow, TetherlineDatabase } from "./database.ts";
import type { WalkCard } from "./walk-card.ts";
import { cardsOf } from "./walk-card.ts";
import type { WalkRow } from "./walk-row.ts";
import { byWalk, emptyRow, stampInOrder, withEntries } from "./walk-row.ts";
import type { WalkStore } from "./walk-store.ts";

/** The database is no longer the one this store was opened on: it was wiped, and sequence numbers in it start anew. */
class ReplacedDatabaseError extends Error {
  override readonly name = "ReplacedDatabaseError";
}

/** From how many entries on one read of the whole walk is quicker than a look-up of each. */
const MANY = 100;

const BY_KEY = "[wire.subject+wire.source+wire.id]";
const BY_OFFSET = "[wire.subject+offset]";

/** Entries in IndexedDB. Every tab on the database enters under the same source. */
export class DexieEntryStore implements WalkStore {
  readonly source: string;
  readonly #database: TetherlineDatabase;
  readonly #now: () => Instant;

  constructor(database: TetherlineDatabase, source: string, now: () => Instant) {
    this.#database = database;
    this.source = source;
    this.#now = now;
  }

  async append(walk: WalkId, drafts: readonly Draft[]): Promise<readonly Entry[]> {
    return this.#write(async () => {
      const row = await this.#rowOf(walk);
      const entries = stampInOrder(row, drafts, this.source, this.#now);
      await this.#add(row, entries);
      return entries;
    });
  }

  async takeIn(entries: readonly Entry[]): Promise<TakenIn> {
    return this.#write(async () => {
      let [added, known] = [0, 0];
      const conflicting: Entry[] = [];
      for (const [walk, some] of byWalk(entries)) {
        const sorted = sortedOut(some, await this.#finder(walk, some));
        await this.#add(await this.#rowOf(walk), sorted.fresh);
        added += sorted.fresh.length;
        known += sorted.known;
        conflicting.push(...sorted.conflicting);
      }
      return { added, known, conflicting };
    });
  }

  async read(walk: WalkId, offset: number): Promise<EntryPage> {
    const rows = await this.#database.entries
      .where(BY_OFFSET)
      .between([walk, offset], [walk, Dexie.maxKey], false)
      .toArray();
    return { entries: rows.map(entryOf), offset: rows.at(-1)?.offset ?? offset };
  }

  watch(walk: WalkId, onChange: () => void): () => void {
    return watched(() => this.#database.walks.get(walk), onChange);
  }

  async walks(): Promise<readonly WalkCard[]> {
    return cardsOf(await this.#database.walks.toArray());
  }

  watchWalks(onChange: () => void): () => void {
    return watched(() => this.#database.walks.toArray(), onChange);
  }

  async removeWalk(walk: WalkId): Promise<boolean> {
    return this.#write(async () => {
      const { made, seen } = await this.#rowOf(walk);
      await this.#database.entries
        .where(BY_OFFSET)
        .between([walk, Dexie.minKey], [walk, Dexie.maxKey])
        .delete();
      await this.#database.walks.put({ ...emptyRow(walk), made, seen });
      return true;
    });
  }

  /** One transaction of its own: were it part of another, it would resolve before that one is complete. */
  async #write<Result>(work: () => Promise<Result>): Promise<Result> {
    const { entries, walks, device } = this.#database;
    return this.#database.transaction("rw!", [entries, walks, device], async () => {
      // Both at once: each answer awaited by itself costs another way through the browser.
      const [kept, result] = await Promise.all([device.get("source"), work()]);
      if (kept?.value !== this.source) {
        throw new ReplacedDatabaseError("the database was wiped while it was in use");
      }
      return result;
    });
  }

  async #rowOf(walk: WalkId): Promise<WalkRow> {
    return (await this.#database.walks.get(walk)) ?? emptyRow(walk);
  }

  async #add(row: WalkRow, entries: readonly Entry[]): Promise<void> {
    if (entries.length === 0) return;
    // Both at once, for the same reason as above; should one fail, neither is kept.
    await Promise.all([
      this.#database.entries.bulkAdd(entries.map(({ wire }) => ({ wire }))),
      this.#database.walks.put(withEntries(row, entries, this.source)),
    ]);
  }

  async #finder(walk: WalkId, entries: readonly Entry[]): Promise<(key: string) => Entry | undefined> {
    const { entries: table } = this.#database;
    const rows =
      entries.length < MANY
        ? table.where(BY_KEY).anyOf(entries.map(({ wire }) => [walk, wire.source, wire.id]))
        : table.where(BY_OFFSET).between([walk, Dexie.minKey], [walk, Dexie.maxKey]);
    const here = new Map((await rows.toArray()).map(entryOf).map((entry) => [keyOf(entry), entry]));
    return (key) => here.get(key);
  }
}

function entryOf({ offset, wire }: EntryRow): Entry {
  const { entry, problem } = readEntry(wire);
  if (!entry) throw new UnreadableEntryError(`at offset ${offset}: ${problem}`);
  return entry;
}

/** Calls back after each change of what a query reads; says nothing once the database is closed. */
export function watched(query: () => Promise<unknown>, onChange: () => void): () => void {
  const subscription = liveQuery(query).subscribe({ next: onChange, error: () => {} });
  return () => subscription.unsubscribe();
}
