import type { Draft, Entry, EntryPage, TakenIn } from "../../core/log/index.ts";
import { keyOf } from "../../core/log/index.ts";
import type { Instant, WalkId } from "../../core/units/index.ts";
import { sortedOut } from "./conflicts.ts";
import type { WalkCard } from "./walk-card.ts";
import { cardsOf } from "./walk-card.ts";
import type { WalkRow } from "./walk-row.ts";
import { byWalk, emptyRow, stampInOrder, withEntries } from "./walk-row.ts";
import type { WalkStore } from "./walk-store.ts";

interface KeptEntry {
  readonly offset: number;
  readonly entry: Entry;
}

/** Entries in memory: the same behaviour as on disk, but they end with the page. */
export class MemoryEntryStore implements WalkStore {
  readonly source: string;
  readonly #now: () => Instant;
  readonly #rows = new Map<WalkId, WalkRow>();
  readonly #kept = new Map<WalkId, Map<string, KeptEntry>>();
  readonly #listeners = new Map<() => void, WalkId | null>();
  #offset: number;

  /** Offsets are above `offset`: one store can go on where another stopped. */
  constructor(source: string, now: () => Instant, offset = 0) {
    this.source = source;
    this.#now = now;
    this.#offset = offset;
  }

  async append(walk: WalkId, drafts: readonly Draft[]): Promise<readonly Entry[]> {
    const entries = stampInOrder(this.#rowOf(walk), drafts, this.source, this.#now);
    this.#add(walk, entries);
    return entries;
  }

  async takeIn(entries: readonly Entry[]): Promise<TakenIn> {
    let [added, known] = [0, 0];
    const conflicting: Entry[] = [];
    for (const [walk, some] of byWalk(entries)) {
      const sorted = sortedOut(some, (key) => this.#kept.get(walk)?.get(key)?.entry);
      this.#add(walk, sorted.fresh);
      added += sorted.fresh.length;
      known += sorted.known;
      conflicting.push(...sorted.conflicting);
    }
    return { added, known, conflicting };
  }

  async read(walk: WalkId, offset: number): Promise<EntryPage> {
    const kept = [...(this.#kept.get(walk)?.values() ?? [])].filter((one) => one.offset > offset);
    return { entries: kept.map(({ entry }) => entry), offset: kept.at(-1)?.offset ?? offset };
  }

  watch(walk: WalkId, onChange: () => void): () => void {
    return this.#listen(walk, onChange);
  }

  async walks(): Promise<readonly WalkCard[]> {
    return cardsOf([...this.#rows.values()]);
  }

  watchWalks(onChange: () => void): () => void {
    return this.#listen(null, onChange);
  }

  async removeWalk(walk: WalkId): Promise<boolean> {
    const { made, seen } = this.#rowOf(walk);
    this.#kept.delete(walk);
    this.#rows.set(walk, { ...emptyRow(walk), made, seen });
    this.#tell(walk);
    return true;
  }

  #rowOf(walk: WalkId): WalkRow {
    return this.#rows.get(walk) ?? emptyRow(walk);
  }

  #add(walk: WalkId, entries: readonly Entry[]): void {
    if (entries.length === 0) return;
    const kept = this.#kept.get(walk) ?? new Map<string, KeptEntry>();
    this.#kept.set(walk, kept);
    for (const entry of entries) {
      this.#offset += 1;
      kept.set(keyOf(entry), { offset: this.#offset, entry });
    }
    this.#rows.set(walk, withEntries(this.#rowOf(walk), entries, this.source));
    this.#tell(walk);
  }

  #listen(walk: WalkId | null, onChange: () => void): () => void {
    // A function of its own, so that one callback may listen twice.
    const listener = () => onChange();
    this.#listeners.set(listener, walk);
    return () => this.#listeners.delete(listener);
  }

  #tell(walk: WalkId): void {
    for (const [listener, of] of this.#listeners) if (of === null || of === walk) queueMicrotask(listener);
  }
}
