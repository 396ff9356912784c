import type { Cursor } from "../../core/link/index.ts";
import type { Entry, HybridTime } from "../../core/log/index.ts";
import { deviceOf, isTooFarAhead, keyOf } from "../../core/log/index.ts";
import type { ChainEnd } from "../../core/seal/index.ts";
import type { Instant, WalkId } from "../../core/units/index.ts";
import type { AsideEntry, LinkRow } from "./link-row.ts";
import { joinedRow } from "./link-row.ts";
import type { SealPen } from "./seal-pen.ts";
import type { WalkSummary } from "./walk-summary.ts";

/** An entry and its place in the order of arrival. */
export interface PlacedEntry {
  readonly offset: number;
  readonly entry: Entry;
}

/** What is to be done to a walk and its link. It is worked out before anything is done, so that every store does the same. */
export interface LinkChange {
  readonly remove: readonly PlacedEntry[];
  /** Entries that need not be sent. */
  readonly add: readonly Entry[];
  /** Entries that go behind those and are to be sent. */
  readonly queue: readonly Entry[];
  /** Those of `queue` that were made here just now and chained, and where the chain of the store's own source ends with them; missing for none. */
  readonly chained?: { readonly entries: readonly Entry[]; readonly end: ChainEnd };
  readonly aside: readonly AsideEntry[];
  /** `null` when there is none. */
  readonly link: LinkRow | null;
  /** The new {@link LinkRow.pushed}; `null` means the offset of the last entry of `add`, or no change when `add` is empty. */
  readonly pushed: number | null;
}

/** Whether a change causes settled entries to be sent again. */
export function isResent({ link, pushed }: LinkChange): boolean {
  return link !== null && pushed !== null && pushed < link.pushed;
}

/** What a change is worked out from. */
export interface LinkView {
  readonly link: LinkRow;
  readonly summary: WalkSummary;
  /** The source under which the store enters what is new. */
  readonly source: string;
  readonly now: Instant;
  /** What chains what is made here, and where the chain of the store's own source ends; `null` for entries that are not to be sealed. */
  readonly chain: { readonly pen: SealPen; readonly end: ChainEnd | null } | null;
}

/** Finds what is kept under the key of an entry. */
export type FindEntry = (key: string) => PlacedEntry | undefined;

/** The hub's clock as far as it is known here. */
export function hubClock({ summary, now }: Pick<LinkView, "summary" | "now">): Instant {
  return (now + (summary.clockOffset ?? 0)) as Instant;
}

/** Whether the hub would refuse a hybrid time as being ahead of its clock. */
export function isAheadOf(view: Pick<LinkView, "summary" | "now">, time: string): boolean {
  return isTooFarAhead(time as HybridTime, hubClock(view));
}

/** Stands in for the link of a walk that has none: nothing of it was sent. */
export function unlinkedRow(walk: WalkId): LinkRow {
  const none = { walk, origin: "", hub: "", hubName: "", role: "lead", name: "", device: "" } as const;
  return joinedRow(null, { ...none, joinedAt: 0 as Instant });
}

/** Whether an entry is of the device that is linked. */
export function isOwn({ device }: Pick<LinkRow, "device">, { wire }: Pick<Entry, "wire">): boolean {
  return deviceOf(wire.source) === device;
}

/** Whether an entry is in the outbox. */
export function isWaiting(link: LinkRow, { entry, offset }: PlacedEntry): boolean {
  return offset > link.pushed && isOwn(link, entry);
}

/** Whether a cursor tells that the hub has another store than before: one that was made anew, or an older copy. */
export function isOtherStore({ cursor: before }: LinkRow, cursor: Cursor): boolean {
  return before?.epoch !== cursor.epoch || before.offset > cursor.offset;
}

/** The beginning of what waits to be sent: up to the first entry that waits for its seal. */
export function sealedFirst(placed: readonly PlacedEntry[], { unsealed }: WalkSummary): readonly Entry[] {
  const entries = placed.map(({ entry }) => entry);
  if (!unsealed) return entries;
  const waiting = new Set(unsealed);
  const first = entries.findIndex((entry) => waiting.has(keyOf(entry)));
  return first < 0 ? entries : entries.slice(0, first);
}
