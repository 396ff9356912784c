import type { Draft, Entry, EntryPage, TakenIn } from "../../core/log/index.ts";
import type { Instant, WalkId } from "../../core/units/index.ts";
import { sortedOut } from "./conflicts.ts";
import type { TetherlineDatabase } from "./database.ts";
import { DexieLinkStore } from "./dexie-link-store.ts";
import { DexieRows, watched } from "./dexie-rows.ts";
import { withUnheard } from "./only-here.ts";
import type { WalkCard } from "./walk-card.ts";
import { cardsOf } from "./walk-card.ts";
import type { WalkStore } from "./walk-store.ts";
import type { WalkSummary } from "./walk-summary.ts";
import { byWalk, emptySummary, stampInOrder, withEntries } from "./walk-summary.ts";

/** Entries in IndexedDB. Every tab on the database enters under the same source. */
export class DexieEntryStore implements WalkStore {
  readonly links: DexieLinkStore;
  readonly rows: DexieRows;
  readonly #database: TetherlineDatabase;
  readonly #now: () => Instant;

  constructor(database: TetherlineDatabase, source: string, now: () => Instant) {
    this.#database = database;
    this.#now = now;
    this.rows = new DexieRows(database, source);
    this.links = new DexieLinkStore(this.rows, now);
  }

  get source(): string {
    return this.rows.source;
  }

  async append(walk: WalkId, drafts: readonly Draft[]): Promise<readonly Entry[]> {
    return this.rows.write(["entries", "walks"], async () => {
      const summary = await this.rows.summaryToFollow(walk, this.#now());
      const entries = stampInOrder(summary, drafts, this.source, this.#now);
      await this.#add(summary, entries);
      return entries;
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
        await this.#add(await this.rows.summaryOf(walk), sorted.fresh);
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

  async read(walk: WalkId, offset: number): Promise<EntryPage> {
    const { walks } = this.#database;
    // Together, so that the edition is that of the entries.
    const [kept, summary] = await this.rows.read(["entries", "walks"], () =>
      Promise.all([this.rows.entriesOf(walk, offset), walks.get(walk)]),
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
    return this.rows.write(["entries", "walks", "links", "aside"], async () => {
      const { made, seen, edition = 0 } = await this.rows.summaryOf(walk);
      await this.rows.removeAll(walk);
      await this.rows.putSummary({ ...emptySummary(walk), made, seen, edition: edition + 1 });
      // The record of what a link has read belongs to the walk, so it is deleted too.
      await this.#database.links.delete(walk);
      await this.#database.aside.where("walk").equals(walk).delete();
      return true;
    });
  }

  async #add(summary: WalkSummary, entries: readonly Entry[]): Promise<void> {
    if (entries.length === 0) return;
    // Send both writes at once to save a round trip to the browser; if one fails, neither is kept.
    await Promise.all([
      this.rows.addEntries(entries),
      this.rows.putSummary(withEntries(summary, entries, this.source)),
    ]);
  }
}
