import type { Entry } from "../../core/log/index.ts";
import { highestWithin, keyOf } from "../../core/log/index.ts";
import type { Instant, WalkId } from "../../core/units/index.ts";
import type { KeptEntry } from "./link-changes.ts";
import type { WalkRow } from "./walk-row.ts";
import { emptyRow, isPoisoned, rebuiltRow, withEntries } from "./walk-row.ts";

/** Entries and rows of walks in memory, as the stores on them read and write them. */
export class MemoryRows {
  readonly source: string;
  readonly #first: number;
  #offset: number;
  readonly #rows = new Map<WalkId, WalkRow>();
  readonly #kept = new Map<WalkId, Map<string, KeptEntry>>();
  readonly #listeners = new Map<() => void, WalkId | null>();

  /** Offsets, and editions of walks, begin above `first`. */
  constructor(source: string, first: number) {
    this.source = source;
    this.#first = first;
    this.#offset = first;
  }

  all(): readonly WalkRow[] {
    return [...this.#rows.values()];
  }

  rowOf(walk: WalkId): WalkRow {
    return this.#rows.get(walk) ?? { ...emptyRow(walk), edition: this.#first };
  }

  setRow(row: WalkRow): void {
    this.#rows.set(row.walk, row);
  }

  /** The row as the next entry follows it: without a hybrid time that the hub would refuse. */
  rowToFollow(walk: WalkId, now: Instant): WalkRow {
    const row = this.rowOf(walk);
    if (!isPoisoned(row, now)) return row;
    const times = this.entriesOf(walk).map(({ entry }) => entry.hlc);
    return { ...row, seen: highestWithin(times, (now + (row.ahead ?? 0)) as Instant) };
  }

  find(walk: WalkId, key: string): KeptEntry | undefined {
    return this.#kept.get(walk)?.get(key);
  }

  /** The entries of a walk behind an offset, in order of arrival. */
  entriesOf(walk: WalkId, after = 0): readonly KeptEntry[] {
    const kept = [...(this.#kept.get(walk)?.values() ?? [])];
    // In order of arrival already: what takes another's place is put behind.
    return after === 0 ? kept : kept.filter(({ offset }) => offset > after);
  }

  /** Offset of the last entry of a walk; 0 for none. */
  head(walk: WalkId): number {
    return this.entriesOf(walk).at(-1)?.offset ?? 0;
  }

  /** Takes entries out and puts others in; returns the offset of the last one, 0 when there is none. */
  change(walk: WalkId, removed: readonly KeptEntry[], added: readonly Entry[]): number {
    if (removed.length === 0 && added.length === 0) return 0;
    const kept = this.#kept.get(walk) ?? new Map<string, KeptEntry>();
    this.#kept.set(walk, kept);
    for (const { entry } of removed) kept.delete(keyOf(entry));
    for (const entry of added) {
      this.#offset += 1;
      kept.set(keyOf(entry), { offset: this.#offset, entry });
    }
    const row = this.rowOf(walk);
    this.#rows.set(
      walk,
      removed.length === 0
        ? withEntries(row, added, this.source)
        : rebuiltRow(
            row,
            [...kept.values()].map(({ entry }) => entry),
            this.source,
          ),
    );
    this.#tell(walk);
    return added.length === 0 ? 0 : this.#offset;
  }

  removeAll(walk: WalkId): void {
    const { made, seen, edition = 0 } = this.rowOf(walk);
    this.#kept.delete(walk);
    this.#rows.set(walk, { ...emptyRow(walk), made, seen, edition: edition + 1 });
    this.#tell(walk);
  }

  /** Calls back after each change of a walk, `null` of any; returns the end of it. */
  listen(walk: WalkId | null, onChange: () => void): () => void {
    // A function of its own, so that one callback may listen twice.
    const listener = () => onChange();
    this.#listeners.set(listener, walk);
    return () => this.#listeners.delete(listener);
  }

  #tell(walk: WalkId): void {
    for (const [listener, of] of this.#listeners) if (of === null || of === walk) queueMicrotask(listener);
  }
}
