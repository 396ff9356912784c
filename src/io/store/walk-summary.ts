import type { Draft, Entry, HybridTime } from "../../core/log/index.ts";
import { isOfHubs, isTooFarAhead, keyOf, laterOf, stamp, wallOf } from "../../core/log/index.ts";
import type { ChainEnd } from "../../core/seal/index.ts";
import type { Duration, Instant, WalkId } from "../../core/units/index.ts";
import type { SealPen } from "./seal-pen.ts";
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
  /** Where the chain of the store's own source ends, when its last entry has that number; else it is to be looked up. */
  readonly chain?: ChainEnd;
  /** Keys of entries that wait for their seals; missing for none. */
  readonly unsealed?: readonly string[];
  /**
   * The key that the walk's hub tied the device to, `null` for none, as its link has it, so that an entry is made without a look at the
   * link; missing when it is to be looked up there. Whoever ties the device anew takes it out.
   */
  readonly tied?: string | null;
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
    if (!isOfHubs(entry.wire.type) && (lastAt === null || entry.at > lastAt)) lastAt = entry.at;
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
  const { chain, ...unchained } = summary;
  const { clockOffset, unsealed } = summary;
  // Another entry may have the last number now.
  const isHere = entries.some(
    ({ wire }) => wire.source === source && Number(wire.sequence) === chain?.number,
  );
  const bare = {
    ...clearedSummary(isHere ? unchained : summary),
    seen: null,
    ...(clockOffset === undefined ? {} : { clockOffset }),
    ...(unsealed === undefined ? {} : { unsealed }),
  };
  return withEntries(bare, entries, source);
}

/** The summary after all entries were taken out. A number that was used stays used, and what comes next follows what was there. */
export function clearedSummary({ walk, made, seen, chain, edition = 0 }: WalkSummary): WalkSummary {
  const kept = chain === undefined ? {} : { chain };
  return { ...emptySummary(walk), made, seen, edition: edition + 1, ...kept };
}

/** Whether the latest hybrid time of a linked walk is one that its hub would refuse, so that the next must follow another. */
export function isPoisoned({ seen, clockOffset }: WalkSummary, now: Instant): boolean {
  return clockOffset !== undefined && seen !== null && isTooFarAhead(seen, (now + clockOffset) as Instant);
}

/** What making entries takes. */
export interface EntryMaking {
  readonly source: string;
  readonly now: () => Instant;
  /** `null` for entries that are not to be sealed. */
  readonly pen: SealPen | null;
  /** Where the chain of the source ends; see {@link keptEnd}. */
  readonly end: ChainEnd | null;
}

/** Makes the entries of drafts in their order, each numbered, timed and chained after the one before it; with the summary after them. */
export function stampInOrder(
  summary: WalkSummary,
  drafts: readonly Draft[],
  { source, now, pen, end: first }: EntryMaking,
): { readonly entries: readonly Entry[]; readonly summary: WalkSummary } {
  let { made, seen } = summary;
  let end = first;
  const { clockOffset } = summary;
  const entries = drafts.map((draft) => {
    const stamped = stamp(
      draft,
      summary.walk,
      { source, made, seen, ...(clockOffset === undefined ? {} : { clockOffset }) },
      now(),
    );
    const entry = pen?.chained(stamped, end) ?? stamped;
    end = pen?.chainEndOf(entry) ?? null;
    made += 1;
    seen = entry.hlc;
    return entry;
  });
  const after = withEntries(summary, entries, source);
  return { entries, summary: pen && end ? withChained(after, end, entries) : after };
}

/** The end of the chain of the store's own source as the summary tells it; `undefined` when its last entry has to be looked at. */
export function keptEnd({ made, chain }: WalkSummary): ChainEnd | null | undefined {
  if (made === 0) return null;
  return chain?.number === made ? chain : undefined;
}

/** The summary after entries of the own source were put behind its chain, which wait for their seals now. */
export function withChained(summary: WalkSummary, chain: ChainEnd, entries: readonly Entry[]): WalkSummary {
  return withUnsealed({ ...summary, chain }, entries);
}

/** The summary when the device was tied to another key, or to none. */
export function untied({ tied: _, ...summary }: WalkSummary): WalkSummary {
  return summary;
}

/** The summary after entries were found to wait for their seals. */
export function withUnsealed(summary: WalkSummary, entries: readonly Entry[]): WalkSummary {
  const keys = new Set([...(summary.unsealed ?? []), ...entries.map(keyOf)]);
  return keys.size === 0 ? summary : { ...summary, unsealed: [...keys] };
}

/** The summary after entries got their seals, or will get none. */
export function withoutUnsealed(
  { unsealed = [], ...summary }: WalkSummary,
  keys: ReadonlySet<string>,
): WalkSummary {
  const left = unsealed.filter((key) => !keys.has(key));
  return left.length === 0 ? summary : { ...summary, unsealed: left };
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
