import type { WalkId } from "../../core/units/index.ts";
import type { Member } from "../admission/index.ts";
import type { Engine, StoredEntry } from "../engine/index.ts";
import { entriesText, HEARTBEAT_TEXT } from "./event-text.ts";
import type { Subscriber } from "./subscriber.ts";

/** Who reads a stream; `member` is `null` for the hub's owner. */
interface Reader {
  readonly subscriber: Subscriber;
  readonly member: Member | null;
}

/** So many followers are written to before others get their turn, where it is a matter of news and not of entries. */
const AT_ONCE = 50;

/** All open streams of this hub: what is appended to a walk goes to whoever follows it. */
export class FanOut {
  readonly #epoch: string;
  readonly #walks = new Map<WalkId, Set<Reader>>();
  readonly #stopFollowing: () => void;

  constructor(engine: Engine) {
    this.#epoch = engine.epoch;
    this.#stopFollowing = engine.follow((walk, kept) => this.#tell(walk, kept));
  }

  /** How many streams are open. */
  get size(): number {
    let size = 0;
    for (const readers of this.#walks.values()) size += readers.size;
    return size;
  }

  /** Adds a stream, so that it hears of everything from now on; returns a function that ends it. */
  add(walk: WalkId, subscriber: Subscriber, member: Member | null): () => void {
    const readers = this.#walks.get(walk) ?? new Set<Reader>();
    this.#walks.set(walk, readers);
    const reader = { subscriber, member };
    readers.add(reader);
    return () => {
      readers.delete(reader);
      if (readers.size === 0 && this.#walks.get(walk) === readers) this.#walks.delete(walk);
    };
  }

  /** Sends news to everybody who follows a walk and has read what was there before. */
  async send(walk: WalkId, text: string): Promise<void> {
    const shared = Buffer.from(text);
    const readers = [...(this.#walks.get(walk) ?? [])];
    for (const [index, { subscriber }] of readers.entries()) {
      if (subscriber.isLive) subscriber.write(shared);
      if (index % AT_ONCE === AT_ONCE - 1) await new Promise(setImmediate);
    }
  }

  /** How many streams of a walk are open. */
  subscribersOf(walk: WalkId): number {
    return this.#walks.get(walk)?.size ?? 0;
  }

  /** A sign of life to everybody; ends the streams of those for whom `isGood` no longer holds. */
  beat(isGood: (member: Member) => boolean): void {
    for (const readers of this.#walks.values()) {
      for (const { subscriber, member } of [...readers]) {
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
    for (const readers of this.#walks.values()) for (const { subscriber } of [...readers]) subscriber.end();
  }

  #tell(walk: WalkId, kept: readonly StoredEntry[]): void {
    const readers = this.#walks.get(walk);
    if (!readers) return;
    const shared = Buffer.from(entriesText(this.#epoch, kept));
    for (const { subscriber } of [...readers]) subscriber.hear(kept, shared);
  }
}
