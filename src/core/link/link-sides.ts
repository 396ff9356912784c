import type { Said } from "../../words/index.ts";
import { SaidError } from "../../words/index.ts";
import type { Entry } from "../log/index.ts";
import type { Cursor } from "./cursor.ts";
import type { FarHub, Follower, Hello, PushAnswer, PushResult } from "./exchange.ts";

/** Something that came down the stream of a hub. */
export type FarMessage =
  | { readonly kind: "hello"; readonly hello: Hello }
  | { readonly kind: "entry"; readonly entry: Entry; readonly cursor: Cursor }
  /** An entry that could not be read: it will be missing here, and is counted. */
  | { readonly kind: "unreadable"; readonly cursor: Cursor | null }
  /** Up to here there is nothing more for this reader. */
  | { readonly kind: "cursor"; readonly cursor: Cursor }
  | { readonly kind: "presence"; readonly followers: readonly Follower[] }
  | { readonly kind: "beyond"; readonly hubs: readonly FarHub[] }
  /** A sign of life. */
  | { readonly kind: "alive" };

/** The other side could not be reached, or answered with a failure that may pass: the link tries again. */
export class UnreachableError extends SaidError {
  override readonly name = "UnreachableError";
  /** How long the other side asked not to be asked again, in ms; `null` when it did not. */
  readonly retryAfter: number | null;

  constructor(said: Said, options?: ErrorOptions & { readonly retryAfter?: number | null }) {
    super(said, options);
    this.retryAfter = options?.retryAfter ?? null;
  }
}

/** The other side refuses this device from now on (it was withdrawn, its token expired, or the walk is unknown): the link ends. */
export class TurnedAwayError extends SaidError {
  override readonly name = "TurnedAwayError";
  /** The hub's own word for it, such as `bad-code`; `null` when it gave none. */
  readonly reason: string | null;

  constructor(said: Said, options?: ErrorOptions & { readonly reason?: string | null }) {
    super(said, options);
    this.reason = options?.reason ?? null;
  }
}

/** The other side of a link, over a network. */
export interface FarSide {
  /**
   * Resolves once entries may be offered, with how long a question to the other side takes, in ms; missing where they may be
   * at once. Rejects as {@link push} does.
   */
  ready?(): Promise<number>;
  /** Offers entries, at least one; resolves once what became of each is durable over there. */
  push(entries: readonly Entry[], signal: AbortSignal): Promise<PushAnswer>;
  /**
   * Follows the log from behind `after` (`null` from its beginning) and calls back in order; resolves when the stream ended.
   * Rejects with {@link UnreachableError} or {@link TurnedAwayError}.
   */
  follow(after: Cursor | null, hear: (message: FarMessage) => void, signal: AbortSignal): Promise<void>;
}

/** An entry that was offered and what became of it. */
export interface Settled {
  readonly entry: Entry;
  readonly result: PushResult;
}

/** This side of a link: what is kept of it. Every promise resolves once what it did is durable. */
export interface NearSide {
  /** The oldest entries that the other side has not confirmed, in order of arrival here, at most `limit`. */
  outbox(limit: number): Promise<readonly Entry[]>;
  /** How many entries there are in the whole outbox. */
  unsent(): Promise<number>;
  /**
   * Records the outcome of offered entries. Accepted and known entries leave the outbox. A refused entry either gets another
   * hybrid time and stays (`ahead`), or is set aside and leaves the outbox.
   */
  settle(settled: readonly Settled[]): Promise<void>;
  /** How far the other side's log was read; `null` for not at all. */
  cursor(): Promise<Cursor | null>;
  /** Keeps entries from the other side together with how far it was read. Where two entries disagree under one key, the other side's stays. */
  takeIn(entries: readonly Entry[], cursor: Cursor): Promise<void>;
  /** Calls back whenever the outbox may have grown; returns a function that ends it. */
  watch(onChange: () => void): () => void;
}
