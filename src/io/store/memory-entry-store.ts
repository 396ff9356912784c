import type { Draft, Entry, EntryPage, TakenIn } from "../../core/log/index.ts";
import { keyOf } from "../../core/log/index.ts";
import type { Instant, WalkId } from "../../core/units/index.ts";
import { sortedOut } from "./conflicts.ts";
import { type FindPen, NO_PEN, penFor, sealedOf } from "./find-pen.ts";
import { MemoryLinkStore } from "./memory-link-store.ts";
import { MemoryRows } from "./memory-rows.ts";
import type { WalkCard } from "./walk-card.ts";
import { cardsOf } from "./walk-card.ts";
import type { WalkStore } from "./walk-store.ts";
import { byWalk, stampInOrder, withUnsealed } from "./walk-summary.ts";

/** Entries in memory. They behave as entries on disk do, but end with the page. */
export class MemoryEntryStore implements WalkStore {
  readonly links: MemoryLinkStore;
  readonly #now: () => Instant;
  readonly #rows: MemoryRows;
  readonly #findPen: FindPen;

  /** All offsets are above `offset`, so that one store can go on where another stopped. Without a pen entries go unsealed. */
  constructor(source: string, now: () => Instant, offset = 0, findPen: FindPen = NO_PEN) {
    this.#now = now;
    this.#findPen = findPen;
    this.#rows = new MemoryRows(source, offset);
    this.links = new MemoryLinkStore(this.#rows, now, findPen);
  }

  get source(): string {
    return this.#rows.source;
  }

  /** Has entries made under another source from now on, which has none here yet. */
  rename(source: string): void {
    this.#rows.rename(source);
  }

  async append(walk: WalkId, drafts: readonly Draft[]): Promise<readonly Entry[]> {
    const pen = penFor(await this.#findPen(), await this.links.get(walk));
    const before = this.#rows.summaryToFollow(walk, this.#now());
    const end = pen && this.#rows.chainEnd(before, pen);
    const making = { source: this.source, now: this.#now, pen, end };
    const { entries, summary } = stampInOrder(before, drafts, making);
    // As on disk: once a time that the hub would refuse was ignored, it stays ignored.
    if (entries.length > 0) this.#rows.setSummary(before);
    this.#rows.change(walk, [], entries);
    if (entries.length > 0) this.#rows.setSummary(summary);
    return entries;
  }

  async seal(walk: WalkId): Promise<readonly Entry[]> {
    const { unsealed = [] } = this.#rows.summaryOf(walk);
    if (unsealed.length === 0) return [];
    const pen = penFor(await this.#findPen(), await this.links.get(walk));
    const waiting = unsealed.flatMap((key) => this.#rows.find(walk, key)?.entry ?? []);
    const sealed = await sealedOf(waiting, pen);
    this.#rows.putSealed(walk, sealed);
    this.#rows.noteSealed(walk, unsealed);
    return sealed;
  }

  async awaitSeals(walk: WalkId, entries: readonly Entry[]): Promise<void> {
    this.#rows.setSummary(withUnsealed(this.#rows.summaryOf(walk), entries));
  }

  async adoptSeals(walk: WalkId, entries: readonly Entry[]): Promise<void> {
    this.#rows.putSealed(walk, entries);
    this.#rows.noteSealed(walk, entries.map(keyOf));
  }

  async takeIn(entries: readonly Entry[]): Promise<TakenIn> {
    let [added, known] = [0, 0];
    const restamped: Entry[] = [];
    const conflicting: Entry[] = [];
    for (const [walk, some] of byWalk(entries)) {
      const sorted = sortedOut(some, (key) => this.#rows.find(walk, key)?.entry);
      this.#rows.change(walk, [], sorted.fresh);
      this.links.noteUnheard(walk, sorted.fresh);
      added += sorted.fresh.length;
      known += sorted.known;
      restamped.push(...sorted.restamped);
      conflicting.push(...sorted.conflicting);
    }
    return { added, known, restamped, conflicting };
  }

  async read(walk: WalkId, offset: number, most?: number): Promise<EntryPage> {
    const kept = this.#rows.entriesOf(walk, offset).slice(0, most);
    return {
      entries: kept.map(({ entry }) => entry),
      offset: kept.at(-1)?.offset ?? offset,
      edition: this.#rows.summaryOf(walk).edition ?? 0,
    };
  }

  watch(walk: WalkId, onChange: () => void): () => void {
    return this.#rows.listen(walk, onChange);
  }

  async walks(): Promise<readonly WalkCard[]> {
    return cardsOf(this.#rows.all());
  }

  watchWalks(onChange: () => void): () => void {
    return this.#rows.listen(null, onChange);
  }

  async removeWalk(walk: WalkId): Promise<boolean> {
    const pen = await this.#findPen();
    const summary = this.#rows.summaryOf(walk);
    const chain = pen && this.#rows.chainEnd(summary, pen);
    if (chain) this.#rows.setSummary({ ...summary, chain });
    this.#rows.removeAll(walk);
    await this.links.remove(walk);
    return true;
  }

  /** Repeats a change in place that another store of the same walk has made. */
  adopt(walk: WalkId, removed: readonly Entry[], added: readonly Entry[]): void {
    const keys = new Set([...removed, ...added].map(keyOf));
    const gone = [...keys].flatMap((key) => this.#rows.find(walk, key) ?? []);
    this.#rows.change(walk, gone, added);
  }
}
