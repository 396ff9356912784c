import type { Draft, Entry, HybridTime } from "../../core/log/index.ts";
import { isTooFarAhead, laterOf, stamp, wallOf } from "../../core/log/index.ts";
import type { Duration, Instant, WalkId } from "../../core/units/index.ts";
import type { WalkMark, WalkOpening } from "./walk-mark.ts";
import { markOf, openingOf } from "./walk-mark.ts";

/**
 * What a store keeps of a walk beside its entries, so that neither the next sequence number nor a list of walks needs
 * a look at all of them. It follows from the entries alone, whatever the order they came in.
 */
export interface WalkRow {
  readonly walk: WalkId;
  /** The highest sequence number that the store's own source has in this walk. */
  readonly made: number;
  /** The latest hybrid time in this walk, from anyone. */
  readonly seen: HybridTime | null;
  readonly count: number;
  /** The latest moment at which something in the log happened. */
  readonly lastAt: Instant | null;
  readonly opening: WalkOpening | null;
  /** In the order of the log. */
  readonly marks: readonly WalkMark[];
  /** How often entries were replaced or taken out; missing for never. */
  readonly edition?: number;
  /** How far the clock of the hub is ahead of this device's, as hybrid times follow it; missing where there is no hub. */
  readonly ahead?: Duration;
}

/** The row of a walk that has no entries. */
export function emptyRow(walk: WalkId): WalkRow {
  return { walk, made: 0, seen: null, count: 0, lastAt: null, opening: null, marks: [] };
}

/** The highest number of ten digits: what is above it was not made by this program and is not counted on from. */
const HIGHEST_SEQUENCE = 9_999_999_999;

/** The last millisecond that RFC 3339 can write; a hybrid time beyond it is kept but not followed. */
const LAST_INSTANT = Date.UTC(9999, 11, 31, 23, 59, 59, 999);

/** The highest sequence number an entry takes up: its id is one too, as this program writes it. */
function takenBy({ wire }: Entry): number {
  return [wire.sequence, wire.id]
    .filter((text) => /^\d+$/.test(text))
    .map(Number)
    .reduce((most, next) => (next > most && next <= HIGHEST_SEQUENCE ? next : most), 0);
}

/** The row after entries were added. */
export function withEntries(row: WalkRow, entries: readonly Entry[], source: string): WalkRow {
  let { made, seen, lastAt, opening } = row;
  const marks = [...row.marks];
  for (const entry of entries) {
    if (entry.wire.source === source) made = Math.max(made, takenBy(entry));
    if (wallOf(entry.hlc) <= LAST_INSTANT) seen = laterOf(seen, entry.hlc);
    if (lastAt === null || entry.at > lastAt) lastAt = entry.at;
    const opened = openingOf(entry);
    if (opened && (opening === null || opened.order < opening.order)) opening = opened;
    const mark = markOf(entry);
    if (mark) marks.push(mark);
  }
  if (marks.length > row.marks.length) marks.sort((a, b) => (a.order < b.order ? -1 : 1));
  return { ...row, made, seen, count: row.count + entries.length, lastAt, opening, marks };
}

/** The row after entries were replaced or taken out: worked out again from those there are now. */
export function rebuiltRow(row: WalkRow, entries: readonly Entry[], source: string): WalkRow {
  const { walk, made, ahead, edition = 0 } = row;
  // A number that was used stays used.
  const bare = { ...emptyRow(walk), made, edition: edition + 1, ...(ahead === undefined ? {} : { ahead }) };
  return withEntries(bare, entries, source);
}

/** Whether the latest hybrid time of a linked walk is one that its hub would refuse, so that the next must follow another. */
export function isPoisoned({ seen, ahead }: WalkRow, now: Instant): boolean {
  return ahead !== undefined && seen !== null && isTooFarAhead(seen, (now + ahead) as Instant);
}

/** Makes the entries of drafts in their order, each numbered and timed after the one before it. */
export function stampInOrder(
  row: WalkRow,
  drafts: readonly Draft[],
  source: string,
  now: () => Instant,
): readonly Entry[] {
  let { made, seen } = row;
  const { ahead } = row;
  return drafts.map((draft) => {
    const entry = stamp(
      draft,
      row.walk,
      { source, made, seen, ...(ahead === undefined ? {} : { ahead }) },
      now(),
    );
    made += 1;
    seen = entry.hlc;
    return entry;
  });
}

/** Entries by walk, each walk's in the order given. */
export function byWalk(entries: readonly Entry[]): ReadonlyMap<WalkId, readonly Entry[]> {
  const walks = new Map<WalkId, Entry[]>();
  for (const entry of entries) {
    const list = walks.get(entry.walk);
    if (list) list.push(entry);
    else walks.set(entry.walk, [entry]);
  }
  return walks;
}
