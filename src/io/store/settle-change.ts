import type { Settled } from "../../core/link/index.ts";
import type { Entry } from "../../core/log/index.ts";
import { keyOf, likenessOf, withStamp } from "../../core/log/index.ts";
import { stampedAnew } from "./clock-change.ts";
import type { FindEntry, LinkChange, LinkView, PlacedEntry } from "./link-change.ts";
import { isOwn, isWaiting } from "./link-change.ts";
import { asideNotices, restampNotices, withNotices } from "./link-notices.ts";
import type { AsideEntry } from "./link-row.ts";
import { withHeard } from "./only-here.ts";

/** Entries that were offered, and what is needed to settle them. */
export interface SettleNews {
  readonly settled: readonly Settled[];
  /** The `LinkRow.round` in which they were offered. */
  readonly round: number;
  readonly find: FindEntry;
  /** The first entries in the outbox, one more than were offered. */
  readonly waiting: readonly PlacedEntry[];
  /** All entries of the walk; needed only when one was refused as `ahead`. */
  readonly all: readonly PlacedEntry[];
}

/** What becomes of entries that were offered to the hub. */
export function settleChange(view: LinkView, { settled, round, find, waiting, all }: SettleNews): LinkChange {
  const { link, summary, now } = view;
  const done = new Set<string>();
  const remove: PlacedEntry[] = [];
  const queue: Entry[] = [];
  const aside: AsideEntry[] = [];
  const ahead: PlacedEntry[] = [];
  let pushed = link.pushed;
  for (const { entry, result } of settled) {
    const kept = find(keyOf(entry));
    if (!kept) continue;
    const isUnchanged = likenessOf(kept.entry, entry) === "identical";
    if (isUnchanged || result.outcome !== "refused") done.add(keyOf(entry));
    if (isUnchanged && isOwn(link, entry)) pushed = Math.max(pushed, kept.offset);
    if (result.outcome !== "refused") {
      const there = result.hlc === undefined ? entry : withStamp(entry, result.hlc);
      if (likenessOf(kept.entry, there) === "identical") continue;
      // The hub holds it under another stamp, and the hub's stamp wins. The entry moves to the end and is offered again.
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
  // An entry that was replaced by the hub's form of it moved to the end, behind entries that were not offered with it.
  // So nothing from the first entry without an outcome onwards is settled.
  const left = waiting.find(({ entry }) => !done.has(keyOf(entry)));
  if (left) pushed = Math.min(pushed, left.offset - 1);
  const stamped = stampedAnew(view, { refused: ahead, all, isIn: (placed) => isWaiting(link, placed) });
  return {
    remove: [...remove, ...stamped.remove],
    add: [],
    queue: [...queue, ...stamped.queue],
    aside,
    link: withNotices(withHeard(link, aside), [
      ...asideNotices(aside, now),
      ...restampNotices(stamped.remove.length, summary.clockOffset ?? null, now),
    ]),
    // If sending has restarted since the offer, these answers may come from another store and settle nothing.
    pushed: (link.round ?? 0) === round ? pushed : link.pushed,
  };
}
