import type { WalkId } from "../../core/units/index.ts";
import type { Member } from "../admission/index.ts";
import type { CursorSeal } from "../cursors/index.ts";
import type { Engine, StoredEntry } from "../engine/index.ts";
import { pageOf } from "../engine/index.ts";
import { entriesText, HEARTBEAT_TEXT } from "./event-text.ts";
import type { Subscriber } from "./subscriber.ts";

/** A subscriber and the member whose token it came with; `null` for the hub's owner. */
interface Subscription {
  readonly subscriber: Subscriber;
  readonly member: Member | null;
}

/** How many subscribers are sent news in a row before other work gets a turn. News can wait. */
const AT_ONCE = 50;

/** All open streams of this hub. What is appended to a walk goes to its subscribers. */
export class FanOut {
  readonly #cursors: CursorSeal;
  readonly #walks = new Map<WalkId, Set<Subscription>>();
  readonly #stopFollowing: () => void;
  readonly #stopAwaiting: () => void;

  constructor(engine: Engine, cursors: CursorSeal) {
    this.#cursors = cursors;
    this.#stopFollowing = engine.follow((walk, kept) => this.#tell(walk, kept));
    // Whoever reads comes back with a cursor of the epoch before, and reads everything again.
    this.#stopAwaiting = engine.onEpoch(() => this.#endAll());
  }

  /** How many streams are open. */
  get size(): number {
    let size = 0;
    for (const subscriptions of this.#walks.values()) size += subscriptions.size;
    return size;
  }

  /** Adds a stream, so that it hears of everything that is appended after; returns a function that takes it out again. */
  add(walk: WalkId, subscriber: Subscriber, member: Member | null): () => void {
    const subscriptions = this.#walks.get(walk) ?? new Set<Subscription>();
    this.#walks.set(walk, subscriptions);
    const subscription = { subscriber, member };
    subscriptions.add(subscription);
    return () => {
      subscriptions.delete(subscription);
      if (subscriptions.size === 0 && this.#walks.get(walk) === subscriptions) this.#walks.delete(walk);
    };
  }

  /** Sends news to all subscribers of a walk that have been sent what was stored before. */
  async send(walk: WalkId, text: string): Promise<void> {
    const shared = Buffer.from(text);
    const subscriptions = [...(this.#walks.get(walk) ?? [])];
    for (const [index, { subscriber }] of subscriptions.entries()) {
      if (subscriber.isLive) subscriber.write(shared);
      if (index % AT_ONCE === AT_ONCE - 1) await new Promise(setImmediate);
    }
  }

  /** How many streams of a walk are open. */
  subscribersOf(walk: WalkId): number {
    return this.#walks.get(walk)?.size ?? 0;
  }

  /** Sends a sign of life to everybody, and ends the streams of members whose token is not valid. */
  beat(isGood: (member: Member) => boolean): void {
    for (const subscriptions of this.#walks.values()) {
      for (const { subscriber, member } of [...subscriptions]) {
        if (member && !isGood(member)) subscriber.end();
        else subscriber.write(HEARTBEAT_TEXT);
      }
    }
  }

  /** Ends the streams of a token. */
  end({ walk, token }: Member): void {
    for (const { subscriber, member } of [...(this.#walks.get(walk) ?? [])]) {
      if (member?.token === token) subscriber.end();
    }
  }

  /** Ends all streams. */
  close(): void {
    this.#stopFollowing();
    this.#stopAwaiting();
    this.#endAll();
  }

  #endAll(): void {
    for (const subscriptions of this.#walks.values())
      for (const { subscriber } of [...subscriptions]) subscriber.end();
  }

  #tell(walk: WalkId, kept: readonly StoredEntry[]): void {
    const subscriptions = this.#walks.get(walk);
    if (!subscriptions) return;
    // One text for all, but never one of unbounded length.
    for (let rest = kept; rest.length > 0; ) {
      const part = pageOf(rest, rest.length);
      rest = rest.slice(part.length);
      const shared = Buffer.from(entriesText(part, (last) => this.#cursors.behind(walk, last)));
      for (const { subscriber } of [...subscriptions]) subscriber.hear(part, shared);
    }
  }
}
