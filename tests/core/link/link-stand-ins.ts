import { afterEach, beforeEach, expect, vi } from "vitest";
import type {
  Cursor,
  FarMessage,
  FarSide,
  LinkSettings,
  NearSide,
  PushAnswer,
  PushResult,
  RefusalReason,
} from "../../../src/core/link/index.ts";
import { Link, UnreachableError } from "../../../src/core/link/index.ts";
import type { Entry } from "../../../src/core/log/index.ts";
import { keyOf } from "../../../src/core/log/index.ts";
import type { Instant } from "../../../src/core/units/index.ts";
import { waited } from "../../../src/io/link/timers.ts";
import { numberedEntry } from "../log/numbered-entry.ts";
import { ZERO } from "../log-writer.ts";

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
export function answerFor(entries: readonly Entry[], reason: RefusalReason | null = null): PushAnswer {
  const results = entries.map(
    ({ wire: { source, id } }): PushResult =>
      reason === null
        ? { source, id, outcome: "accepted" }
        : { source, id, outcome: "refused", reason, words: "no" },
  );
  return { results, gaps: [], now: Date.now() as Instant };
}

/** A link under virtual time between a plain near side and a far side whose every word is a test's. */
function heldLink({
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
  const time = { now: () => Date.now(), random, wait: waited };
  const link = new Link({ near, far, time, settings });
  /** The stream there is now. */
  const stream = (): HeldStream => {
    const last = streams.at(-1);
    if (!last) throw new Error("nothing was followed yet");
    return last;
  };
  return { link, near, push, offers, streams, stream };
}

/** Has the tests of a file run under virtual time; what it returns begins a link, which is stopped behind the test. */
export function heldLinks() {
  let begun: ReturnType<typeof heldLink>[] = [];
  beforeEach(() => {
    vi.useFakeTimers({ now: ZERO });
  });
  afterEach(async () => {
    for (const { link, streams } of begun) {
      const stopped = link.stop();
      for (const stream of streams) stream.end();
      await stopped;
    }
    // Nothing of a link that was stopped waits for anything.
    expect(vi.getTimerCount()).toBe(0);
    expect(begun.every(({ near }) => near.watchers.size === 0)).toBe(true);
    begun = [];
    vi.useRealTimers();
  });
  return (parts: Parameters<typeof heldLink>[0] = {}, waiting: readonly Entry[] = []) => {
    const made = heldLink(parts);
    begun.push(made);
    made.near.put(waiting);
    made.link.start();
    return made;
  };
}

/** Lets so many ms pass. */
export const pass = (ms: number) => vi.advanceTimersByTimeAsync(ms);

/** The other side could not be reached. */
export const gone = (retryAfter: number | null = null) => new UnreachableError("gone", { retryAfter });

export const idsOf = (entries: readonly Entry[]) => entries.map(({ wire }) => Number(wire.id));

/** A place in the other side's log. */
export const at = (offset: number, epoch = "one"): Cursor => ({ epoch, offset });

/** What a stream says of the entry of this number. */
export const heard = (number: number, epoch = "one") =>
  ({ kind: "entry", entry: numberedEntry(number), cursor: at(number, epoch) }) as const;
