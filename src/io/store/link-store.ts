import type { Cursor, Settled } from "../../core/link/index.ts";
import type { ClockOffset, Entry } from "../../core/log/index.ts";
import type { WalkId } from "../../core/units/index.ts";
import { message, SaidError } from "../../words/index.ts";
import type { AsideEntry, LinkRow, NewLink } from "./link-row.ts";

/** What a link did to the entries of a walk. */
export interface Changed {
  /** Entries that are new here, or took the place of another of the same key. */
  readonly added: readonly Entry[];
  /** Entries that were taken out, or replaced by another form of them. */
  readonly removed: readonly Entry[];
  /** True when entries that were settled are to be sent once more. */
  readonly isResent: boolean;
}

/** The beginning of what is to be sent. */
export interface Outbox {
  readonly entries: readonly Entry[];
  /** See `LinkRow.round`. */
  readonly round: number;
}

/** A walk has no link any more: somebody left it meanwhile. */
export class NotLinkedError extends Error {
  override readonly name = "NotLinkedError";
}

/** A store has read nothing of a walk's log, where its link has got as far as a cursor: the log is to be read from its beginning. */
export class NothingReadError extends SaidError {
  override readonly name = "NothingReadError";
}

/** Throws a {@link NothingReadError} when a link that has read up to `after` has read nothing by what is kept of it. */
export function insistOnRead({ cursor }: LinkRow, after: Cursor | null): void {
  if (after !== null && cursor === null) throw new NothingReadError(message("link/reading-anew"));
}

/** What works out changes of links: only a walk that is linked needs it, and so it is loaded with the first. */
export const linkChanges = () => import("./link-changes.ts");

/**
 * What is kept of the links of walks. Each call is one transaction and resolves when it is durable. A call about a
 * walk without a link rejects with {@link NotLinkedError} unless said otherwise. /
 */
export interface LinkStore {
  all(): Promise<readonly LinkRow[]>;
  /** `null` for a walk without a link. */
  get(walk: WalkId): Promise<LinkRow | null>;
  /** Calls back whenever {@link all} may have changed, by this or another tab; returns a function that ends it. */
  watch(onChange: () => void): () => void;
  /** Keeps the link of a walk that was joined. */
  join(joining: NewLink): Promise<LinkRow>;
  /** Forgets the link of a walk, whose entries stay. Does nothing without a link. */
  leave(walk: WalkId): Promise<void>;
  /** Changes the row of a link. Does nothing without a link. */
  change(walk: WalkId, change: (row: LinkRow) => LinkRow): Promise<void>;
  /** The oldest entries of the device's sources that are not settled, at most `limit`; none without a link. */
  outbox(walk: WalkId, limit: number): Promise<Outbox>;
  /** How many such entries there are in all. */
  unsent(walk: WalkId): Promise<number>;
  /** See `NearSide.settle`; `round` is that of the outbox that they came from. */
  settle(walk: WalkId, settled: readonly Settled[], round: number): Promise<Changed>;
  /**
   * See `NearSide.takeIn`. Where two entries of one key differ, the hub's counts; ours is set aside and, if it is the
   * device's own, made again under the device's next number. What comes next behind `after`, a cursor up to which
   * nothing is kept any more, is not taken in: rejects with {@link NothingReadError}. /
   */
  takeIn(walk: WalkId, entries: readonly Entry[], cursor: Cursor, after?: Cursor | null): Promise<Changed>;
  /**
   * Corrects hybrid times by the offset of the hub's clock from now on, and stamps entries anew that the hub would
   * refuse for their times: those of the device that are not settled, or with `every` those of any source. In a walk
   * without a link nothing is settled. /
   */
  setClock(walk: WalkId, clock: ClockOffset, scope: "own" | "every"): Promise<Changed>;
  /** What was set aside of a walk, oldest first. */
  aside(walk: WalkId): Promise<readonly AsideEntry[]>;
}
