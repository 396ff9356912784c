import type { Cursor } from "../../core/link/index.ts";
import type { Entry } from "../../core/log/index.ts";
import { isTooFarAhead, keyOf, laterOf, likenessOf, remade, tick } from "../../core/log/index.ts";
import type { FindEntry, LinkChange, LinkView, PlacedEntry } from "./link-change.ts";
import { hubClock, isOtherStore, isOwn } from "./link-change.ts";
import { anewNotices, asideNotices, withNotices } from "./link-notices.ts";
import type { AsideEntry } from "./link-row.ts";
import { nextRound } from "./link-row.ts";
import { withHeard, withUnheard } from "./only-here.ts";
import { withEntries } from "./walk-summary.ts";

/** Entries from the hub, and what is needed to take them in. */
export interface TakeInNews {
  readonly entries: readonly Entry[];
  /** How far the hub's log is read with them. */
  readonly cursor: Cursor;
  readonly find: FindEntry;
  /** Whether nothing waits to be sent. */
  readonly isAllSent: boolean;
  /** All entries of the walk; needed only when the hub's store {@link isOtherStore}. */
  readonly all: readonly PlacedEntry[];
}

/** What becomes of entries from the hub. */
export function takeInChange(view: LinkView, news: TakeInNews): LinkChange {
  const { link, now } = view;
  const { entries, cursor, isAllSent } = news;
  const { add, remove, aside, displaced } = sortedIn(view, news);
  const { queue, ...made } = madeAgain(view, displaced, add);
  // What a store had that was lost, or came back from an older copy, the one there is may never have got.
  const isAnew = isOtherStore(link, cursor);
  const all = news.all.map(({ entry }) => entry);
  const unheard = isAnew ? withUnheard({ ...link, round: nextRound(link) }, all) : link;
  const foreign = aside.filter((one) => !isOwn(link, one));
  return {
    remove,
    add,
    queue,
    ...made,
    aside,
    link: withNotices({ ...withHeard(unheard, entries), cursor }, [
      ...asideNotices(foreign, now),
      ...anewNotices(queue.length, now),
    ]),
    pushed: isAnew && link.pushed > 0 ? 0 : isAllSent ? null : link.pushed,
  };
}

/** Entries from the hub, sorted by what they are to those that are here. */
interface SortedIn {
  readonly add: readonly Entry[];
  /** Those that entries from the hub take the place of. */
  readonly remove: readonly PlacedEntry[];
  /** Of these, the ones that said something else. */
  readonly aside: readonly AsideEntry[];
  /** Of these again, the device's own: what they say is to be made again. */
  readonly displaced: readonly Entry[];
}

function sortedIn({ link, now }: LinkView, { entries, find }: TakeInNews): SortedIn {
  const remove: PlacedEntry[] = [];
  const aside: AsideEntry[] = [];
  const displaced: Entry[] = [];
  const fresh = new Map<string, Entry>();
  for (const entry of entries) {
    const key = keyOf(entry);
    if (fresh.has(key)) continue;
    const kept = find(key);
    const likeness = kept && likenessOf(kept.entry, entry);
    if (likeness === "identical") continue;
    fresh.set(key, entry);
    if (!kept) continue;
    remove.push(kept);
    if (likeness !== "different") continue;
    aside.push({ walk: link.walk, wire: kept.entry.wire, reason: "conflict", at: now });
    if (isOwn(link, kept.entry)) displaced.push(kept.entry);
  }
  return { add: [...fresh.values()], remove, aside, displaced };
}

/** Entries whose `source` and `id` another entry has, made again as entries of the store's own source behind `added`. */
function madeAgain(
  view: LinkView,
  displaced: readonly Entry[],
  added: readonly Entry[],
): Pick<LinkChange, "queue" | "chained"> {
  if (displaced.length === 0) return { queue: [] };
  const { source, chain } = view;
  const pen = chain?.pen ?? null;
  const clock = hubClock(view);
  let { made, seen } = withEntries(view.summary, added, source);
  const last = added.find(({ wire }) => wire.source === source && Number(wire.sequence) === made);
  let end = last && pen ? pen.chainEndOf(last) : (chain?.end ?? null);
  if (seen !== null && isTooFarAhead(seen, clock)) seen = null;
  const queue = displaced.map((entry) => {
    made += 1;
    const hlc = tick(seen, clock);
    seen = laterOf(seen, hlc);
    const again = remade(entry, { source, number: made, hlc });
    if (!pen) return again;
    const chained = pen.chained(again, end);
    end = pen.chainEndOf(chained);
    return chained;
  });
  return { queue, ...(pen && end ? { chained: { entries: queue, end } } : {}) };
}
