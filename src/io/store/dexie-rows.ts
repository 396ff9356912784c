import { Dexie, liveQuery } from "dexie";
import type { Entry, HybridTime } from "../../core/log/index.ts";
import { highestWithin, isSameStatement, keyOf, sequenceText } from "../../core/log/index.ts";
import type { ChainEnd } from "../../core/seal/index.ts";
import type { Instant, WalkId } from "../../core/units/index.ts";
import type { EntryRow, TetherlineDatabase } from "./database.ts";
import { KnownEntries } from "./known-entries.ts";
import type { PlacedEntry } from "./link-change.ts";
import type { LinkRow } from "./link-row.ts";
import type { SealPen } from "./seal-pen.ts";
import { linkRowOf, storedLinkRow, storedWalkSummary, walkSummaryOf } from "./stored-rows.ts";
import type { WalkSummary } from "./walk-summary.ts";
import { emptySummary, isPoisoned, keptEnd, untied } from "./walk-summary.ts";

/** The database was wiped since this store was opened on it: what it holds is not what was kept, and its sequence numbers start anew. */
export class ReplacedDatabaseError extends Error {
  override readonly name = "ReplacedDatabaseError";
}

/** From this many entries on, reading the whole walk is faster than looking up each entry. */
const MANY = 100;

const BY_KEY = "[wire.subject+wire.source+wire.id]";
const BY_OFFSET = "[wire.subject+offset]";

type TableName = "entries" | "walks" | "device" | "links" | "aside";

/** The tables of the database as the stores on it read and write them. */
export class DexieRows {
  readonly database: TetherlineDatabase;
  /** The source that the database has to be of; another one of the same device once the database was deleted and put back. */
  source: string;
  readonly #known = new KnownEntries();

  constructor(database: TetherlineDatabase, source: string) {
    this.database = database;
    this.source = source;
  }

  /** Does work in a write transaction of its own. As a part of another transaction it would resolve before that one is complete. */
  write<Result>(names: readonly TableName[], work: () => Promise<Result>): Promise<Result> {
    return this.#do("rw!", names, work);
  }

  /** Reads from several tables at one moment. A database that was wiped is no answer: nothing would seem to be linked or kept. */
  read<Result>(names: readonly TableName[], work: () => Promise<Result>): Promise<Result> {
    return this.#do("r", names, work);
  }

  #do<Result>(mode: "r" | "rw!", names: readonly TableName[], work: () => Promise<Result>): Promise<Result> {
    const { device } = this.database;
    return this.database.transaction(mode, [...names, "device"], async () => {
      // Request both at once: awaiting each separately would cost another round trip to the browser.
      const [kept, result] = await Promise.all([device.get("source"), work()]);
      if (kept?.value !== this.source) {
        throw new ReplacedDatabaseError("the database was wiped while it was in use");
      }
      return result;
    });
  }

  async summaryOf(walk: WalkId): Promise<WalkSummary> {
    const stored = await this.database.walks.get(walk);
    return stored ? walkSummaryOf(stored) : emptySummary(walk);
  }

  async putSummary(summary: WalkSummary): Promise<void> {
    await this.database.walks.put(storedWalkSummary(summary));
  }

  /** The summaries of all walks, in no order. */
  async allSummaries(): Promise<readonly WalkSummary[]> {
    return (await this.read(["walks"], () => this.database.walks.toArray())).map(walkSummaryOf);
  }

  /** `null` for a walk without a link. */
  async linkOf(walk: WalkId): Promise<LinkRow | null> {
    const stored = await this.database.links.get(walk);
    return stored ? linkRowOf(stored) : null;
  }

  /** Keeps the row of a link that ties the device as it did; see {@link putTied} for another one. */
  async putLink(row: LinkRow): Promise<void> {
    await this.database.links.put(storedLinkRow(row));
  }

  /** Keeps the row of a link that may tie the device to another key, and that the summary no longer knows to which. */
  async putTied(row: LinkRow): Promise<void> {
    await this.putLink(row);
    await this.untie(row.walk);
  }

  /** Keeps that it is to be looked up to which key the device is tied in a walk. */
  async untie(walk: WalkId): Promise<void> {
    const summary = await this.summaryOf(walk);
    if (summary.tied !== undefined) await this.putSummary(untied(summary));
  }

  /** A summary that knows to which key the device is tied. */
  async tied(summary: WalkSummary): Promise<WalkSummary> {
    if (summary.tied !== undefined) return summary;
    return { ...summary, tied: (await this.linkOf(summary.walk))?.deviceKey ?? null };
  }

  /** The rows of all links, in no order. */
  async allLinks(): Promise<readonly LinkRow[]> {
    return (await this.read(["links"], () => this.database.links.toArray())).map(linkRowOf);
  }

  /** The summary to make the next entry from: its latest hybrid time is one that the hub would accept. */
  async summaryToFollow(walk: WalkId, now: Instant): Promise<WalkSummary> {
    const summary = await this.summaryOf(walk);
    if (!isPoisoned(summary, now)) return summary;
    const times = (await this.entriesOf(walk)).map(({ entry }) => entry.hlc);
    const seen: HybridTime | null = highestWithin(times, (now + (summary.clockOffset ?? 0)) as Instant);
    return { ...summary, seen };
  }

  /** Where the chain of the own source ends in a walk. */
  async chainEnd(summary: WalkSummary, pen: SealPen): Promise<ChainEnd | null> {
    const kept = keptEnd(summary);
    if (kept !== undefined) return kept;
    const { walk, made } = summary;
    const [last] = await this.#keyed(walk, [[this.source, sequenceText(made)]]);
    return last ? pen.chainEndOf(last.entry) : null;
  }

  /** The entries of a walk that wait for their seals. */
  async unsealed({ walk, unsealed = [] }: WalkSummary): Promise<readonly Entry[]> {
    const keys = unsealed.map((key) => key.split(" ") as [string, string]);
    return keys.length === 0 ? [] : (await this.#keyed(walk, keys)).map(({ entry }) => entry);
  }

  /** What is kept of a walk by source and id. */
  async #keyed(walk: WalkId, keys: readonly (readonly [string, string])[]): Promise<readonly PlacedEntry[]> {
    const rows = this.database.entries.where(BY_KEY).anyOf(keys.map((key) => [walk, ...key]));
    return (await rows.toArray()).map(this.#placed);
  }

  /** Replaces entries by the same ones with their seals, at their places; those that are not here, or say something else now, are left alone. */
  async putSealed(walk: WalkId, entries: readonly Entry[]): Promise<void> {
    const here = await this.finder(walk, entries);
    const placed = entries.flatMap((sealed) => {
      const kept = here(keyOf(sealed));
      if (!kept || !isSameStatement(kept.entry, sealed)) return [];
      // Its stamp may be another one by now.
      const wire = { ...kept.entry.wire, seal: sealed.wire["seal"] };
      return [{ offset: kept.offset, entry: { ...kept.entry, wire } }];
    });
    await this.database.entries.bulkPut(placed.map(({ offset, entry: { wire } }) => ({ offset, wire })));
    Dexie.currentTransaction.on("complete", () => {
      for (const { offset, entry } of placed) this.#known.note([entry], offset);
    });
  }

  /** The entries of a walk behind an offset, in order of arrival, the first `most` of them. */
  async entriesOf(walk: WalkId, after = 0, most?: number): Promise<readonly PlacedEntry[]> {
    const behind = this.#behind(walk, after);
    return (await (most === undefined ? behind : behind.limit(most)).toArray()).map(this.#placed);
  }

  /** How many entries of a walk behind an offset satisfy a condition. */
  countOf(walk: WalkId, after: number, isSuch: (row: EntryRow) => boolean): Promise<number> {
    return this.#behind(walk, after).filter(isSuch).count();
  }

  /** The first entries of a walk behind an offset that satisfy a condition, at most `limit`. */
  async firstOf(
    walk: WalkId,
    after: number,
    limit: number,
    isSuch: (row: EntryRow) => boolean,
  ): Promise<readonly PlacedEntry[]> {
    return (await this.#behind(walk, after).filter(isSuch).limit(limit).toArray()).map(this.#placed);
  }

  /** Offset of the last entry of a walk; 0 for none. */
  async head(walk: WalkId): Promise<number> {
    const [last] = await this.#behind(walk, 0).reverse().limit(1).primaryKeys();
    return last ?? 0;
  }

  /** What is kept under the keys of some entries of a walk. */
  async finder(walk: WalkId, entries: readonly Entry[]): Promise<(key: string) => PlacedEntry | undefined> {
    const { entries: table } = this.database;
    const rows =
      entries.length < MANY
        ? table.where(BY_KEY).anyOf(entries.map(({ wire }) => [walk, wire.source, wire.id]))
        : this.#behind(walk, 0);
    const here = new Map((await rows.toArray()).map(this.#placed).map((kept) => [keyOf(kept.entry), kept]));
    return (key) => here.get(key);
  }

  /** Adds entries behind all others, in their order; returns the offset of the last one, 0 when there is none. */
  async addEntries(entries: readonly Entry[]): Promise<number> {
    if (entries.length === 0) return 0;
    const last = await this.database.entries.bulkAdd(entries.map(({ wire }) => ({ wire })));
    // Wait for completion: if the transaction fails, other entries will get these offsets.
    Dexie.currentTransaction.on("complete", () => this.#known.note(entries, last));
    return last;
  }

  /** Deletes all entries of a walk. */
  async removeAll(walk: WalkId): Promise<void> {
    await this.#behind(walk, 0).delete();
  }

  readonly #placed = (row: EntryRow): PlacedEntry => ({
    offset: row.offset,
    entry: this.#known.entryOf(row),
  });

  #behind(walk: WalkId, after: number) {
    return this.database.entries
      .where(BY_OFFSET)
      .between([walk, after > 0 ? after : Dexie.minKey], [walk, Dexie.maxKey], false);
  }
}

/** Calls back after each change of what a query reads, until the database is closed; returns a function that ends it. */
export function watched(query: () => Promise<unknown>, onChange: () => void): () => void {
  const subscription = liveQuery(query).subscribe({ next: onChange, error: () => {} });
  return () => subscription.unsubscribe();
}
