import type { Entry } from "../../core/log/index.ts";
import { highestWithin, isSameStatement, keyOf, sequenceText } from "../../core/log/index.ts";
import type { ChainEnd } from "../../core/seal/index.ts";
import type { Instant, WalkId } from "../../core/units/index.ts";
import { Listeners } from "../../core/units/index.ts";
import type { PlacedEntry } from "./link-change.ts";
import type { SealPen } from "./seal-pen.ts";
import type { WalkSummary } from "./walk-summary.ts";
import {
  clearedSummary,
  emptySummary,
  isPoisoned,
  keptEnd,
  rebuiltSummary,
  withEntries,
  withoutUnsealed,
} from "./walk-summary.ts";

/** Entries and rows of walks in memory, as the stores on them read and write them. */
export class MemoryRows {
  source: string;
  readonly #first: number;
  #offset: number;
  readonly #rows = new Map<WalkId, WalkSummary>();
  readonly #kept = new Map<WalkId, Map<string, PlacedEntry>>();
  readonly #listeners = new Listeners<[changed: WalkId]>();

  /** Offsets, and editions of walks, begin above `first`. */
  constructor(source: string, first: number) {
    this.source = source;
    this.#first = first;
    this.#offset = first;
  }

  all(): readonly WalkSummary[] {
    return [...this.#rows.values()];
  }

  summaryOf(walk: WalkId): WalkSummary {
    return this.#rows.get(walk) ?? { ...emptySummary(walk), edition: this.#first };
  }

  setSummary(summary: WalkSummary): void {
    this.#rows.set(summary.walk, summary);
  }

  /** The summary to make the next entry from: its latest hybrid time is one that the hub would accept. */
  summaryToFollow(walk: WalkId, now: Instant): WalkSummary {
    const summary = this.summaryOf(walk);
    if (!isPoisoned(summary, now)) return summary;
    const times = this.entriesOf(walk).map(({ entry }) => entry.hlc);
    return { ...summary, seen: highestWithin(times, (now + (summary.clockOffset ?? 0)) as Instant) };
  }

  find(walk: WalkId, key: string): PlacedEntry | undefined {
    return this.#kept.get(walk)?.get(key);
  }

  /** Goes on under another source, of which no entry is here. */
  rename(source: string): void {
    this.source = source;
    for (const [walk, { chain: _, ...row }] of this.#rows) this.#rows.set(walk, { ...row, made: 0 });
  }

  /** Where the chain of the own source ends in a walk. */
  chainEnd(summary: WalkSummary, pen: SealPen): ChainEnd | null {
    const kept = keptEnd(summary);
    if (kept !== undefined) return kept;
    const last = this.find(summary.walk, `${this.source} ${sequenceText(summary.made)}`);
    return last ? pen.chainEndOf(last.entry) : null;
  }

  /** Replaces entries by the same ones with their seals, at their places; those that are not here, or say something else now, are left alone. */
  putSealed(walk: WalkId, entries: readonly Entry[]): void {
    for (const sealed of entries) {
      const key = keyOf(sealed);
      const placed = this.find(walk, key);
      if (!placed || !isSameStatement(placed.entry, sealed)) continue;
      const wire = { ...placed.entry.wire, seal: sealed.wire["seal"] };
      this.#kept.get(walk)?.set(key, { ...placed, entry: { ...placed.entry, wire } });
    }
  }

  /** Notes that these entries of a walk wait for their seals no longer. */
  noteSealed(walk: WalkId, keys: readonly string[]): void {
    this.#rows.set(walk, withoutUnsealed(this.summaryOf(walk), new Set(keys)));
    this.#listeners.tellSoon(walk);
  }

  /** The entries of a walk behind an offset, in order of arrival. */
  entriesOf(walk: WalkId, after = 0): readonly PlacedEntry[] {
    const kept = [...(this.#kept.get(walk)?.values() ?? [])];
    // Already in order of arrival, because a replacement is added at the end.
    return after === 0 ? kept : kept.filter(({ offset }) => offset > after);
  }

  /** Offset of the last entry of a walk; 0 for none. */
  head(walk: WalkId): number {
    return this.entriesOf(walk).at(-1)?.offset ?? 0;
  }

  /** Takes entries out and puts others in; returns the offset of the last one, 0 when there is none. */
  change(walk: WalkId, removed: readonly PlacedEntry[], added: readonly Entry[]): number {
    if (removed.length === 0 && added.length === 0) return 0;
    const kept = this.#kept.get(walk) ?? new Map<string, PlacedEntry>();
    this.#kept.set(walk, kept);
    for (const { entry } of removed) kept.delete(keyOf(entry));
    for (const entry of added) {
      this.#offset += 1;
      kept.set(keyOf(entry), { offset: this.#offset, entry });
    }
    const summary = this.summaryOf(walk);
    this.#rows.set(
      walk,
      removed.length === 0
        ? withEntries(summary, added, this.source)
        : rebuiltSummary(
            summary,
            [...kept.values()].map(({ entry }) => entry),
            this.source,
          ),
    );
    this.#listeners.tellSoon(walk);
    return added.length === 0 ? 0 : this.#offset;
  }

  removeAll(walk: WalkId): void {
    this.#kept.delete(walk);
    this.#rows.set(walk, clearedSummary(this.summaryOf(walk)));
    this.#listeners.tellSoon(walk);
  }

  /** Calls back after each change of a walk, or with `null` of any; returns a function that ends it. */
  listen(walk: WalkId | null, onChange: () => void): () => void {
    return this.#listeners.add((changed) => {
      if (walk === null || changed === walk) onChange();
    });
  }
}
