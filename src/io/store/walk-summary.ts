import type { Draft, Entry, HybridTime } from "../../core/log/index.ts";
import { isTooFarAhead, laterOf, stamp, wallOf } from "../../core/log/index.ts";
import type { Duration, Instant, WalkId } from "../../core/units/index.ts";
import type { WalkMark, WalkOpening } from "./walk-mark.ts";
import { markOf, openingOf } from "./walk-mark.ts";

/**
 * What a store keeps of a walk beside its entries, so that neither the next sequence number nor a list of walks needs
 * a look at all of them. It follows from the entries alone, whatever the order they came in.
 */
export interface WalkSummary {
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
  /** The hub's clock less this device's, as far as hybrid times are corrected by it; missing while no hub was compared with. */
  readonly clockOffset?: Duration;
}

/** The summary of a walk that has no entries. */
export function emptySummary(walk: WalkId): WalkSummary {
  return { walk, made: 0, seen: null, count: 0, lastAt: null, opening: null, marks: [] };
}

/** The highest number of ten digits. A higher one was not made by this program, and counting does not go on from it. */
const HIGHEST_SEQUENCE = 9_999_999_999;

/** The last millisecond that RFC 3339 can write; a hybrid time beyond it is kept but not followed. */
const LAST_INSTANT = Date.UTC(9999, 11, 31, 23, 59, 59, 999);

/** The highest sequence number that an entry takes up: this program writes the number as `id` too. */
function takenBy({ wire }: Entry): number {
  return [wire.sequence, wire.id]
    .filter((text) => /^\d+$/.test(text))
    .map(Number)
    .reduce((most, next) => (next > most && next <= HIGHEST_SEQUENCE ? next : most), 0);
}

/** The summary after entries were added. */
export function withEntries(summary: WalkSummary, entries: readonly Entry[], source: string): WalkSummary {
  let { made, seen, lastAt, opening } = summary;
  const marks = [...summary.marks];
  for (const entry of entries) {
    if (entry.wire.source === source) made = Math.max(made, takenBy(entry));
    if (wallOf(entry.hlc) <= LAST_INSTANT) seen = laterOf(seen, entry.hlc);
    if (lastAt === null || entry.at > lastAt) lastAt = entry.at;
    const opened = openingOf(entry);
    if (opened && (opening === null || opened.order < opening.order)) opening = opened;
    const mark = markOf(entry);
    if (mark) marks.push(mark);
  }
  if (marks.length > summary.marks.length) marks.sort((a, b) => (a.order < b.order ? -1 : 1));
  return { ...summary, made, seen, count: summary.count + entries.length, lastAt, opening, marks };
}

/** The summary after entries were replaced or taken out, worked out from all entries that are left. */
export function rebuiltSummary(summary: WalkSummary, entries: readonly Entry[], source: string): WalkSummary {
  const { walk, made, clockOffset, edition = 0 } = summary;
  // A number that was used stays used.
  const bare = {
    ...emptySummary(walk),
    made,
    edition: edition + 1,
    ...(clockOffset === undefined ? {} : { clockOffset }),
  };
  return withEntries(bare, entries, source);
}

/** Whether the latest hybrid time of a linked walk is one that its hub would refuse, so that the next must follow another. */
export function isPoisoned({ seen, clockOffset }: WalkSummary, now: Instant): boolean {
  return clockOffset !== undefined && seen !== null && isTooFarAhead(seen, (now + clockOffset) as Instant);
}

/** Makes the entries of drafts in their order, each numbered and timed after the one before it. */
export function stampInOrder(
  summary: WalkSummary,
  drafts: readonly Draft[],
  source: string,
  now: () => Instant,
): readonly Entry[] {
  let { made, seen } = summary;
  const { clockOffset } = summary;
  return drafts.map((draft) => {
    const entry = stamp(
      draft,
      summary.walk,
      { source, made, seen, ...(clockOffset === undefined ? {} : { clockOffset }) },
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
