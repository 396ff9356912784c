import type { ClockOffset, Entry } from "../../core/log/index.ts";
import { highestWithin, restamp } from "../../core/log/index.ts";
import type { LinkChange, LinkView, PlacedEntry } from "./link-change.ts";
import { hubClock, isAheadOf, isWaiting } from "./link-change.ts";
import { restampNotices, withNotices } from "./link-notices.ts";

/** A comparison of clocks, and the entries that it may change. */
export interface ClockNews {
  readonly clock: ClockOffset;
  /** All entries of the walk. */
  readonly all: readonly PlacedEntry[];
  /** Whether entries of the device alone are stamped anew, or those of every source. */
  readonly scope: "own" | "every";
}

/** The change that a comparison of clocks makes. The summary of the view has the new offset already. */
export function clockChange(view: LinkView, { clock, all, scope }: ClockNews): LinkChange {
  const { link, summary, now } = view;
  const isIn = (placed: PlacedEntry) =>
    scope === "own" ? isWaiting(link, placed) : placed.offset > link.pushed;
  const tooFar = all.filter((placed) => isIn(placed) && isAheadOf(view, placed.entry.hlc));
  const { remove, queue } = stampedAnew(view, { refused: tooFar, all, isIn });
  return {
    remove,
    add: [],
    queue,
    aside: [],
    link: withNotices({ ...link, clock }, restampNotices(remove.length, summary.clockOffset ?? null, now)),
    pushed: link.pushed,
  };
}

/** Entries that the hub refuses for their hybrid times, and those that they stand among. */
export interface RefusedTimes {
  readonly refused: readonly PlacedEntry[];
  /** All entries of the walk. */
  readonly all: readonly PlacedEntry[];
  /** Whether an entry may be stamped anew together with the refused ones. */
  readonly isIn: (placed: PlacedEntry) => boolean;
}

/**
 * Entries that are stamped anew: those refused, and all that wait behind them. If only the refused ones got earlier times,
 * they would sort before entries that were made earlier.
 */
export function stampedAnew(view: LinkView, { refused, all, isIn }: RefusedTimes): Restamped {
  const [first] = refused.map(({ entry }) => entry.hlc).sort();
  if (first === undefined) return { remove: [], queue: [] };
  const offsets = new Set(refused.map(({ offset }) => offset));
  const [remove, rest] = [[] as PlacedEntry[], [] as PlacedEntry[]];
  for (const placed of all) {
    const moves = offsets.has(placed.offset) || (isIn(placed) && placed.entry.hlc >= first);
    (moves ? remove : rest).push(placed);
  }
  const clock = hubClock(view);
  const seen = highestWithin(
    rest.map(({ entry }) => entry.hlc),
    clock,
  );
  return { remove, queue: restamp(entriesOf(remove), clock, seen) };
}

/** Entries as they were, and as they are once they are stamped anew. */
export type Restamped = Pick<LinkChange, "remove" | "queue">;

const entriesOf = (placed: readonly PlacedEntry[]): readonly Entry[] => placed.map(({ entry }) => entry);
