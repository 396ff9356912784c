import type { Cursor, RefusalReason, Settled } from "../../core/link/index.ts";
import type { ClockOffset, Entry, HybridTime } from "../../core/log/index.ts";
import {
  deviceOf,
  highestWithin,
  isTooFarAhead,
  keyOf,
  laterOf,
  likenessOf,
  remade,
  restamp,
  tick,
  withStamp,
} from "../../core/log/index.ts";
import type { Duration, Instant, WalkId } from "../../core/units/index.ts";
import type { AsideEntry, KeptNotice, LinkRow } from "./link-row.ts";
import { joinedRow, nextRound } from "./link-row.ts";
import { withHeard, withUnheard } from "./only-here.ts";
import type { WalkSummary } from "./walk-summary.ts";
import { withEntries } from "./walk-summary.ts";

/** An entry and its place in the order of arrival. */
export interface PlacedEntry {
  readonly offset: number;
  readonly entry: Entry;
}

/** What is to be done to a walk and its link, worked out beforehand so that every store does the same. */
export interface LinkChange {
  readonly remove: readonly PlacedEntry[];
  /** Entries that need not be sent. */
  readonly add: readonly Entry[];
  /** Entries that go behind those and are to be sent. */
  readonly queue: readonly Entry[];
  readonly aside: readonly AsideEntry[];
  /** `null` when there is none. */
  readonly link: LinkRow | null;
  /** The new {@link LinkRow.pushed}; `null` for the offset of the last of `add`, or as it was when there is none. */
  readonly pushed: number | null;
}

/** Whether a change has entries sent once more that were settled. */
export function isResent({ link, pushed }: LinkChange): boolean {
  return link !== null && pushed !== null && pushed < link.pushed;
}

/** What a change is worked out from. */
export interface LinkView {
  readonly link: LinkRow;
  readonly row: WalkSummary;
  /** The source under which the store enters what is new. */
  readonly source: string;
  readonly now: Instant;
}

/** Whether the hub would refuse a hybrid time as being ahead. */
export function isAheadOf(view: Pick<LinkView, "row" | "now">, time: string): boolean {
  return isTooFarAhead(time as HybridTime, hubClock(view));
}

/** Stands in for the link of a walk that has none: nothing of it was sent. */
export function unlinkedRow(walk: WalkId): LinkRow {
  const joining = { walk, origin: "", hub: "", hubName: "", role: "lead", name: "", device: "" } as const;
  return joinedRow(null, { ...joining, joinedAt: 0 as Instant });
}

/** Whether an entry is of the device that is linked. */
function isOwn({ device }: Pick<LinkRow, "device">, { wire }: Entry): boolean {
  return deviceOf(wire.source) === device;
}

/** Whether an entry is in the outbox. */
export function isWaiting(link: LinkRow, { entry, offset }: PlacedEntry): boolean {
  return offset > link.pushed && isOwn(link, entry);
}

/** The hub's clock as far as it is known here. */
const hubClock = ({ row, now }: Pick<LinkView, "row" | "now">): Instant =>
  (now + (row.clockOffset ?? 0)) as Instant;

/**
 * What becomes of entries that were offered in a `round`. `here` finds what is kept under their keys; `waiting` are the first in
 * the outbox, one more than were offered; `all` are all entries of the walk, needed only when one was refused as `ahead`.
 */
export function settleChange(
  view: LinkView,
  settled: readonly Settled[],
  round: number,
  here: (key: string) => PlacedEntry | undefined,
  waiting: readonly PlacedEntry[],
  all: readonly PlacedEntry[],
): LinkChange {
  const { link, now } = view;
  const done = new Set<string>();
  const remove: PlacedEntry[] = [];
  const queue: Entry[] = [];
  const aside: AsideEntry[] = [];
  const ahead: PlacedEntry[] = [];
  let pushed = link.pushed;
  for (const { entry, result } of settled) {
    const kept = here(keyOf(entry));
    if (!kept) continue;
    const isUnchanged = likenessOf(kept.entry, entry) === "identical";
    if (isUnchanged || result.outcome !== "refused") done.add(keyOf(entry));
    if (isUnchanged && isOwn(link, entry)) pushed = Math.max(pushed, kept.offset);
    if (result.outcome !== "refused") {
      const there = result.hlc === undefined ? entry : withStamp(entry, result.hlc);
      if (likenessOf(kept.entry, there) === "identical") continue;
      // The hub has it under another stamp, which counts. It goes behind all else and is offered once more.
      remove.push(kept);
      queue.push(there);
    } else if (!isUnchanged || result.reason === "conflict") {
      // In conflict: the hub's entry of that key is on its way here and settles it.
    } else if (result.reason === "ahead") ahead.push(kept);
    else {
      remove.push(kept);
      aside.push({ walk: link.walk, wire: entry.wire, reason: result.reason, at: now });
    }
  }
  // One that was stamped anew, and back again by the hub's own, went behind entries that were not offered with it.
  const left = waiting.find(({ entry }) => !done.has(keyOf(entry)));
  if (left) pushed = Math.min(pushed, left.offset - 1);
  const stamped = stampedAnew(view, ahead, all, (kept) => isWaiting(link, kept));
  return {
    remove: [...remove, ...stamped.remove],
    add: [],
    queue: [...queue, ...stamped.queue],
    aside,
    link: withNotices(withHeard(link, aside), [
      ...asideNotices(aside, now),
      ...restampNotices(stamped.remove.length, view.row.clockOffset ?? null, now),
    ]),
    // Meanwhile everything is to be sent once more: what another store said of these says nothing about this one.
    pushed: (link.round ?? 0) === round ? pushed : link.pushed,
  };
}

/** Whether how far the hub's log was read tells that it is another log than before: made anew, or an older copy. */
export function isOtherStore({ cursor: before }: LinkRow, cursor: Cursor): boolean {
  return before?.epoch !== cursor.epoch || before.offset > cursor.offset;
}

/**
 * What becomes of entries from the hub. `isAllSent`: nothing waits to be sent; `all` are all entries of the walk, needed
 * only when it {@link isOtherStore}.
 */
export function takeInChange(
  view: LinkView,
  entries: readonly Entry[],
  cursor: Cursor,
  here: (key: string) => PlacedEntry | undefined,
  isAllSent: boolean,
  all: readonly PlacedEntry[],
): LinkChange {
  const { link, row, source, now } = view;
  const remove: PlacedEntry[] = [];
  const aside: AsideEntry[] = [];
  const displaced: Entry[] = [];
  const fresh = new Map<string, Entry>();
  for (const entry of entries) {
    const key = keyOf(entry);
    if (fresh.has(key)) continue;
    const kept = here(key);
    const likeness = kept && likenessOf(kept.entry, entry);
    if (likeness === "identical") continue;
    fresh.set(key, entry);
    if (!kept) continue;
    remove.push(kept);
    if (likeness !== "different") continue;
    aside.push({ walk: link.walk, wire: kept.entry.wire, reason: "conflict", at: now });
    if (isOwn(link, kept.entry)) displaced.push(kept.entry);
  }
  const add = [...fresh.values()];
  const queue = enteredAnew(displaced, withEntries(row, add, source), source, hubClock(view));
  // What a store had that was lost, or came back from an older copy, the one there is may never have got.
  const isAnew = isOtherStore(link, cursor);
  const unheard = isAnew
    ? withUnheard(
        { ...link, round: nextRound(link) },
        all.map(({ entry }) => entry),
      )
    : link;
  const foreign = aside.filter(({ wire }) => deviceOf(wire.source) !== link.device);
  return {
    remove,
    add,
    queue,
    aside,
    link: withNotices({ ...withHeard(unheard, entries), cursor }, [
      ...asideNotices(foreign, now),
      ...anewNotices(queue.length, now),
    ]),
    pushed: isAnew && link.pushed > 0 ? 0 : isAllSent ? null : link.pushed,
  };
}

/** What follows from a comparison of clocks; the row has its offset already, `all` are all entries of the walk. */
export function clockChange(
  view: LinkView,
  clock: ClockOffset,
  all: readonly PlacedEntry[],
  scope: "own" | "every",
): LinkChange {
  const { link, row, now } = view;
  const isIn = (kept: PlacedEntry) => (scope === "own" ? isWaiting(link, kept) : kept.offset > link.pushed);
  const tooFar = all.filter((kept) => isIn(kept) && isAheadOf(view, kept.entry.hlc));
  const { remove, queue } = stampedAnew(view, tooFar, all, isIn);
  return {
    remove,
    add: [],
    queue,
    aside: [],
    link: withNotices({ ...link, clock }, restampNotices(remove.length, row.clockOffset ?? null, now)),
    pushed: link.pushed,
  };
}

/** The same notice again adds to the one there is. */
function withNotices(link: LinkRow, notices: readonly KeptNotice[]): LinkRow {
  let all = [...link.notices];
  for (const notice of notices) {
    const same = all.find(({ kind, reason }) => kind === notice.kind && reason === notice.reason);
    all = all.filter((one) => one !== same);
    all.push({ ...notice, count: notice.count + (same?.count ?? 0) });
  }
  return { ...link, notices: all };
}

/**
 * Entries that were refused, and all that wait behind them, stamped anew: were it only some of them, those would come to
 * stand before entries that were made earlier.
 */
function stampedAnew(
  view: LinkView,
  refused: readonly PlacedEntry[],
  all: readonly PlacedEntry[],
  isWaiting: (kept: PlacedEntry) => boolean,
): Pick<LinkChange, "remove" | "queue"> {
  const [first] = refused.map(({ entry }) => entry.hlc).sort();
  if (first === undefined) return { remove: [], queue: [] };
  const offsets = new Set(refused.map(({ offset }) => offset));
  const [remove, rest] = [[] as PlacedEntry[], [] as PlacedEntry[]];
  for (const kept of all) {
    const moves = offsets.has(kept.offset) || (isWaiting(kept) && kept.entry.hlc >= first);
    (moves ? remove : rest).push(kept);
  }
  const clock = hubClock(view);
  const seen = highestWithin(
    rest.map(({ entry }) => entry.hlc),
    clock,
  );
  return {
    remove,
    queue: restamp(
      remove.map(({ entry }) => entry),
      clock,
      seen,
    ),
  };
}

/** Entries whose `source` and `id` another entry has, made again as entries of the store's own source. */
function enteredAnew(
  entries: readonly Entry[],
  row: WalkSummary,
  source: string,
  clock: Instant,
): readonly Entry[] {
  let { made } = row;
  let seen = row.seen !== null && isTooFarAhead(row.seen, clock) ? null : row.seen;
  return entries.map((entry) => {
    made += 1;
    const hlc = tick(seen, clock);
    seen = laterOf(seen, hlc);
    return remade(entry, { source, number: made, hlc });
  });
}

function restampNotices(count: number, clockOffset: Duration | null, at: Instant): readonly KeptNotice[] {
  return count === 0
    ? []
    : [{ key: `restamped-${at}`, at, kind: "restamped", count, reason: null, clockOffset }];
}

function anewNotices(count: number, at: Instant): readonly KeptNotice[] {
  return count === 0 ? [] : [{ key: `anew-${at}`, at, kind: "anew", count, reason: null, clockOffset: null }];
}

function asideNotices(aside: readonly AsideEntry[], at: Instant): readonly KeptNotice[] {
  const counts = new Map<RefusalReason, number>();
  for (const { reason } of aside) counts.set(reason, (counts.get(reason) ?? 0) + 1);
  return [...counts].map(([reason, count]) => ({
    key: `aside-${reason}-${at}`,
    at,
    kind: "aside",
    count,
    reason,
    clockOffset: null,
  }));
}
