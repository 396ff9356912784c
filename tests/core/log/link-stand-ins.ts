import { vi } from "vitest";
import type {
  Cursor,
  Entry,
  FarMessage,
  FarSide,
  LinkSettings,
  NearSide,
  PushAnswer,
  PushResult,
  Refusal,
} from "../../../src/core/log/index.ts";
import { keyOf, Link } from "../../../src/core/log/index.ts";
import type { Instant } from "../../../src/core/units/index.ts";

/** A stream that a test speaks on. */
export interface HeldStream {
  readonly after: Cursor | null;
  readonly signal: AbortSignal;
  readonly hear: (message: FarMessage) => void;
  /** Ends it, with an error as a failure. */
  end(error?: Error): void;
}

/** What is kept on this side of a link, in plain sight. */
export class PlainNearSide implements NearSide {
  waiting: Entry[] = [];
  readonly taken: Entry[] = [];
  cursorKept: Cursor | null = null;
  readonly settledTo: (readonly [id: string, outcome: string])[] = [];
  /** When set, keeping what was heard fails with it. */
  trouble: Error | null = null;
  readonly watchers = new Set<() => void>();

  put(entries: readonly Entry[]): void {
    this.waiting.push(...entries);
    for (const watcher of this.watchers) watcher();
  }

  outbox: NearSide["outbox"] = async (limit) => this.waiting.slice(0, limit);
  unsent: NearSide["unsent"] = async () => this.waiting.length;
  settle: NearSide["settle"] = async (settled) => {
    for (const { entry, result } of settled) {
      this.settledTo.push([entry.wire.id, "reason" in result ? result.reason : result.outcome]);
      const stays = "reason" in result && result.reason === "ahead";
      if (!stays) this.waiting = this.waiting.filter((one) => keyOf(one) !== keyOf(entry));
    }
  };
  cursor: NearSide["cursor"] = async () => this.cursorKept;
  takeIn: NearSide["takeIn"] = async (entries, cursor) => {
    if (this.trouble) throw this.trouble;
    this.taken.push(...entries);
    this.cursorKept = cursor;
  };
  watch: NearSide["watch"] = (onChange) => {
    this.watchers.add(onChange);
    return () => this.watchers.delete(onChange);
  };
}

/** An answer to a batch: each accepted, or refused for a reason. */
export function answerFor(entries: readonly Entry[], reason: Refusal | null = null): PushAnswer {
  const results = entries.map(
    ({ wire: { source, id } }): PushResult =>
      reason === null
        ? { source, id, outcome: "accepted" }
        : { source, id, outcome: "refused", reason, words: "no" },
  );
  return { results, gaps: [], now: Date.now() as Instant };
}

/** A link under virtual time between a plain near side and a far side whose every word is a test's. */
export function heldLink({
  random = () => 0,
  settings = {},
}: {
  readonly random?: () => number;
  readonly settings?: Partial<LinkSettings>;
} = {}) {
  const near = new PlainNearSide();
  const streams: HeldStream[] = [];
  /** The moment of each offer, in ms since the link began. */
  const offers: number[] = [];
  const since = Date.now();
  const push = vi.fn<FarSide["push"]>(async (entries) => answerFor(entries));
  const far: FarSide = {
    push: (entries, signal) => {
      offers.push(Date.now() - since);
      return push(entries, signal);
    },
    follow: (after, hear, signal) =>
      new Promise<void>((resolve, reject) => {
        const end = (error?: Error) => (error ? reject(error) : resolve());
        streams.push({ after, signal, hear, end });
      }),
  };
  const wait = (ms: number, signal: AbortSignal) =>
    new Promise<void>((resolve) => {
      if (signal.aborted) return resolve();
      const end = () => {
        clearTimeout(timer);
        signal.removeEventListener("abort", end);
        resolve();
      };
      const timer = setTimeout(end, ms);
      signal.addEventListener("abort", end);
    });
  const link = new Link({ near, far, time: { now: () => Date.now(), random, wait }, settings });
  /** The stream there is now. */
  const stream = (): HeldStream => {
    const last = streams.at(-1);
    if (!last) throw new Error("nothing was followed yet");
    return last;
  };
  return { link, near, push, offers, streams, stream };
}
