import type { Draft, Entry, EntryPage, TakenIn } from "../../core/log/index.ts";
import { keyOf } from "../../core/log/index.ts";
import type { Instant, WalkId } from "../../core/units/index.ts";
import { sortedOut } from "./conflicts.ts";
import type { TetherlineDatabase } from "./database.ts";
import { DexieLinkStore } from "./dexie-link-store.ts";
import { DexieRows, watched } from "./dexie-rows.ts";
import { type FindPen, NO_PEN, penFor, sealedOf } from "./find-pen.ts";
import { withUnheard } from "./only-here.ts";
import type { WalkCard } from "./walk-card.ts";
import { cardsOf } from "./walk-card.ts";
import type { WalkStore } from "./walk-store.ts";
import type { WalkSummary } from "./walk-summary.ts";
import {
  byWalk,
  clearedSummary,
  stampInOrder,
  withEntries,
  withoutUnsealed,
  withUnsealed,
} from "./walk-summary.ts";

/** Entries in IndexedDB. Every tab on the database enters under the same source. */
export class DexieEntryStore implements WalkStore {
  readonly links: DexieLinkStore;
  readonly rows: DexieRows;
  readonly #database: TetherlineDatabase;
  readonly #now: () => Instant;
  readonly #findPen: FindPen;

  /** Without a pen entries go unsealed. */
  constructor(database: TetherlineDatabase, source: string, now: () => Instant, findPen: FindPen = NO_PEN) {
    this.#database = database;
    this.#now = now;
    this.#findPen = findPen;
    this.rows = new DexieRows(database, source);
    this.links = new DexieLinkStore(this.rows, now, findPen);
  }

  get source(): string {
    return this.rows.source;
  }

  async append(walk: WalkId, drafts: readonly Draft[]): Promise<readonly Entry[]> {
    const found = await this.#findPen();
    return this.rows.write(["entries", "walks", "links"], async () => {
      const summaryNow = await this.rows.summaryToFollow(walk, this.#now());
      const before = found ? await this.rows.tied(summaryNow) : summaryNow;
      const pen = penFor(found, { deviceKey: before.tied ?? null });
      const end = pen && (await this.rows.chainEnd(before, pen));
      const making = { source: this.source, now: this.#now, pen, end };
      const { entries, summary } = stampInOrder(before, drafts, making);
      if (entries.length > 0) await this.#put(entries, summary);
      return entries;
    });
  }

  async seal(walk: WalkId): Promise<readonly Entry[]> {
    const found = await this.#findPen();
    const { keys, entries, pen } = await this.rows.read(["entries", "walks", "links"], async () => {
      const [summary, link] = await Promise.all([this.rows.summaryOf(walk), this.rows.linkOf(walk)]);
      const { unsealed = [] } = summary;
      return { keys: unsealed, entries: await this.rows.unsealed(summary), pen: penFor(found, link) };
    });
    if (keys.length === 0) return [];
    const sealed = await sealedOf(entries, pen);
    await this.#putSealed(walk, sealed, keys);
    return sealed;
  }

  adoptSeals(walk: WalkId, entries: readonly Entry[]): Promise<void> {
    return this.#putSealed(walk, entries, entries.map(keyOf));
  }

  /** Keeps seals, and that these entries wait for theirs no longer. */
  #putSealed(walk: WalkId, sealed: readonly Entry[], keys: readonly string[]): Promise<void> {
    return this.rows.write(["entries", "walks"], async () => {
      await this.rows.putSealed(walk, sealed);
      await this.rows.putSummary(withoutUnsealed(await this.rows.summaryOf(walk), new Set(keys)));
    });
  }

  async awaitSeals(walk: WalkId, entries: readonly Entry[]): Promise<void> {
    await this.rows.write(["walks"], async () => {
      await this.rows.putSummary(withUnsealed(await this.rows.summaryOf(walk), entries));
    });
  }

  async takeIn(entries: readonly Entry[]): Promise<TakenIn> {
    return this.rows.write(["entries", "walks", "links"], async () => {
      let [added, known] = [0, 0];
      const restamped: Entry[] = [];
      const conflicting: Entry[] = [];
      for (const [walk, some] of byWalk(entries)) {
        const here = await this.rows.finder(walk, some);
        const sorted = sortedOut(some, (key) => here(key)?.entry);
        const summary = await this.rows.summaryOf(walk);
        if (sorted.fresh.length > 0)
          await this.#put(sorted.fresh, withEntries(summary, sorted.fresh, this.source));
        const link = await this.rows.linkOf(walk);
        const noted = link && withUnheard(link, sorted.fresh);
        if (noted && noted !== link) await this.rows.putLink(noted);
        added += sorted.fresh.length;
        known += sorted.known;
        restamped.push(...sorted.restamped);
        conflicting.push(...sorted.conflicting);
      }
      return { added, known, restamped, conflicting };
    });
  }

  async read(walk: WalkId, offset: number, most?: number): Promise<EntryPage> {
    const { walks } = this.#database;
    // Together, so that the edition is that of the entries.
    const [kept, summary] = await this.rows.read(["entries", "walks"], () =>
      Promise.all([this.rows.entriesOf(walk, offset, most), walks.get(walk)]),
    );
    return {
      entries: kept.map(({ entry }) => entry),
      offset: kept.at(-1)?.offset ?? offset,
      edition: summary?.edition ?? 0,
    };
  }

  watch(walk: WalkId, onChange: () => void): () => void {
    return watched(() => this.#database.walks.get(walk), onChange);
  }

  async walks(): Promise<readonly WalkCard[]> {
    return cardsOf(await this.rows.allSummaries());
  }

  watchWalks(onChange: () => void): () => void {
    return watched(() => this.#database.walks.toArray(), onChange);
  }

  async removeWalk(walk: WalkId): Promise<boolean> {
    const pen = await this.#findPen();
    return this.rows.write(["entries", "walks", "links", "aside"], async () => {
      const summary = await this.rows.summaryOf(walk);
      // What follows when the walk is back goes on where its chain is now.
      const chain = pen && (await this.rows.chainEnd(summary, pen));
      await this.rows.removeAll(walk);
      await this.rows.putSummary(clearedSummary(chain ? { ...summary, chain } : summary));
      // The record of what a link has read belongs to the walk, so it is deleted too.
      await this.#database.links.delete(walk);
      await this.#database.aside.where("walk").equals(walk).delete();
      return true;
    });
  }

  async #put(entries: readonly Entry[], summary: WalkSummary): Promise<void> {
    // Send both writes at once to save a round trip to the browser; if one fails, neither is kept.
    await Promise.all([this.rows.addEntries(entries), this.rows.putSummary(summary)]);
  }
}
