import { Dexie, liveQuery } from "dexie";
import type { Entry, HybridTime } from "../../core/log/index.ts";
import { highestWithin, keyOf, readEntry, UnreadableEntryError } from "../../core/log/index.ts";
import type { Instant, WalkId } from "../../core/units/index.ts";
import type { EntryRow, TetherlineDatabase } from "./database.ts";
import type { KeptEntry } from "./link-changes.ts";
import type { WalkRow } from "./walk-row.ts";
import { emptyRow, isPoisoned } from "./walk-row.ts";

/** The database is no longer the one this store was opened on: it was wiped, and sequence numbers in it start anew. */
class ReplacedDatabaseError extends Error {
  override readonly name = "ReplacedDatabaseError";
}

/** From how many entries on one read of the whole walk is quicker than a look-up of each. */
const MANY = 100;

const BY_KEY = "[wire.subject+wire.source+wire.id]";
const BY_OFFSET = "[wire.subject+offset]";

type TableName = "entries" | "walks" | "device" | "links" | "aside";

/** The tables of the database as the stores on it read and write them. */
export class DexieRows {
  readonly database: TetherlineDatabase;
  readonly source: string;

  constructor(database: TetherlineDatabase, source: string) {
    this.database = database;
    this.source = source;
  }

  /** One transaction of its own: were it part of another, it would resolve before that one is complete. */
  write<Result>(names: readonly TableName[], work: () => Promise<Result>): Promise<Result> {
    const { device } = this.database;
    return this.database.transaction("rw!", [...names, "device"], async () => {
      // Both at once: each answer awaited by itself costs another way through the browser.
      const [kept, result] = await Promise.all([device.get("source"), work()]);
      if (kept?.value !== this.source) {
        throw new ReplacedDatabaseError("the database was wiped while it was in use");
      }
      return result;
    });
  }

  async rowOf(walk: WalkId): Promise<WalkRow> {
    return (await this.database.walks.get(walk)) ?? emptyRow(walk);
  }

  /** The row as the next entry follows it: without a hybrid time that the hub would refuse. */
  async rowToFollow(walk: WalkId, now: Instant): Promise<WalkRow> {
    const row = await this.rowOf(walk);
    if (!isPoisoned(row, now)) return row;
    const times = (await this.entriesOf(walk)).map(({ entry }) => entry.hlc);
    const seen: HybridTime | null = highestWithin(times, (now + (row.ahead ?? 0)) as Instant);
    return { ...row, seen };
  }

  /** The entries of a walk behind an offset, in order of arrival. */
  async entriesOf(walk: WalkId, after = 0): Promise<readonly KeptEntry[]> {
    return (await this.#behind(walk, after).toArray()).map(keptOf);
  }

  /** How many entries of a walk behind an offset are such. */
  countOf(walk: WalkId, after: number, isSuch: (row: EntryRow) => boolean): Promise<number> {
    return this.#behind(walk, after).filter(isSuch).count();
  }

  /** The first of such entries of a walk behind an offset. */
  async firstOf(
    walk: WalkId,
    after: number,
    limit: number,
    isSuch: (row: EntryRow) => boolean,
  ): Promise<readonly KeptEntry[]> {
    return (await this.#behind(walk, after).filter(isSuch).limit(limit).toArray()).map(keptOf);
  }

  /** Offset of the last entry of a walk; 0 for none. */
  async head(walk: WalkId): Promise<number> {
    const [last] = await this.#behind(walk, 0).reverse().limit(1).primaryKeys();
    return last ?? 0;
  }

  /** What is kept under the keys of some entries of a walk. */
  async finder(walk: WalkId, entries: readonly Entry[]): Promise<(key: string) => KeptEntry | undefined> {
    const { entries: table } = this.database;
    const rows =
      entries.length < MANY
        ? table.where(BY_KEY).anyOf(entries.map(({ wire }) => [walk, wire.source, wire.id]))
        : this.#behind(walk, 0);
    const here = new Map((await rows.toArray()).map(keptOf).map((kept) => [keyOf(kept.entry), kept]));
    return (key) => here.get(key);
  }

  /** Deletes all entries of a walk. */
  async removeAll(walk: WalkId): Promise<void> {
    await this.#behind(walk, 0).delete();
  }

  #behind(walk: WalkId, after: number) {
    return this.database.entries
      .where(BY_OFFSET)
      .between([walk, after > 0 ? after : Dexie.minKey], [walk, Dexie.maxKey], false);
  }
}

function keptOf({ offset, wire }: EntryRow): KeptEntry {
  const { entry, problem } = readEntry(wire);
  if (!entry) throw new UnreadableEntryError(`at offset ${offset}: ${problem}`);
  return { offset, entry };
}

/** Calls back after each change of what a query reads; says nothing once the database is closed. */
export function watched(query: () => Promise<unknown>, onChange: () => void): () => void {
  const subscription = liveQuery(query).subscribe({ next: onChange, error: () => {} });
  return () => subscription.unsubscribe();
}
