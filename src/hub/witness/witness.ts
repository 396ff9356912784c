import { createHash } from "node:crypto";
import type { SigningKey } from "../../core/link/index.ts";
import type { Draft, Entry, FactData } from "../../core/log/index.ts";
import { stamp, typeOf } from "../../core/log/index.ts";
import { chainedTo, sealed } from "../../core/seal/index.ts";
import type { WalkId } from "../../core/units/index.ts";
import { NO_TIME } from "../../core/units/index.ts";
import { message, saidBy, words } from "../../words/index.ts";
import type { Engine } from "../engine/index.ts";
import { EngineTroubleError } from "../engine/index.ts";
import type { Surroundings } from "../surroundings/index.ts";
import { WalkBook } from "./walk-book.ts";

/** What a hub's own entries are made of. */
export interface WitnessParts {
  readonly engine: Engine;
  readonly surroundings: Surroundings;
  readonly key: SigningKey;
  /** `/hubs/…`. */
  readonly id: string;
  readonly name: string;
  /** What there is to be said of everybody who is in a walk. */
  readonly ofMembers: (walk: WalkId) => readonly Word[];
  /** For the console. */
  readonly tell: (words: string) => void;
  /** How long nothing has come before a checkpoint of a walk that is closed, or of what came late, in ms; a second unless given. */
  readonly quiet?: number;
}

/** What is said of a device that was let in, or whose entries were taken, or of another hub. */
export type Word =
  | { readonly name: "device.admitted"; readonly data: FactData<"device.admitted"> }
  | { readonly name: "hub.vouched"; readonly data: FactData<"hub.vouched"> };

/** A checkpoint is made after so many entries at the latest. */
const MOST_BETWEEN = 200;
const QUIET = 1_000;
/** The books of so many walks are kept; others are read again when they are needed. */
const MOST_BOOKS = 30;
/** How often another process of the same hub may be first with a number, at most. */
const MOST_TRIES = 50;
const LONGEST_NAME = 200;
const CHECKPOINTS = "checkpoint.";

/** Up to where a walk's log was looked at, kept for the next start. */
const markKey = (walk: WalkId) => CHECKPOINTS + createHash("sha256").update(walk).digest("base64url");

/**
 * What a hub writes of itself into the log of each walk, under its seal ([SEL4], [SEL5]): its name, which devices it let in with which keys, which other
 * hubs it knows, and checkpoints of what it holds. Each epoch of its store is a source of its own, so that a log that was brought back from a copy gives
 * no number again; several processes on one engine share it, and whoever finds a number taken takes the next.
 */
export class Witness {
  readonly #parts: WitnessParts;
  /** The one used last is at the end. */
  readonly #books = new Map<WalkId, WalkBook>();
  /** The last work on each walk: there is one at a time. */
  readonly #work = new Map<WalkId, Promise<void>>();
  readonly #looks = new Map<WalkId, NodeJS.Timeout>();
  readonly #fresh = new Map<WalkId, number>();
  readonly #stopFollowing: () => void;
  #isClosed = false;
  #told: string | null = null;

  constructor(parts: WitnessParts) {
    this.#parts = parts;
    this.#stopFollowing = parts.engine.follow((walk, kept) => this.#hear(walk, kept.length));
  }

  /** The source of what this hub writes now. */
  get source(): string {
    return `${this.#parts.id}/${this.#parts.engine.epoch}`;
  }

  /** What whoever verifies a log is to be given: the public key, in base64url. */
  get keyCode(): string {
    return this.#parts.key.publicKey;
  }

  /** Looks at the walks of which something came while no process of this hub was running, or was about to make a checkpoint. */
  async begin(): Promise<void> {
    const { engine } = this.#parts;
    const marks = await engine.keep.list(CHECKPOINTS);
    for (const { walk, head } of await engine.walks()) {
      if (marks.get(markKey(walk)) !== markOf(engine.epoch, head)) this.#lookSoon(walk, this.#quiet);
    }
  }

  /** Somebody has joined a walk. What is to be said of it is said now, or where the hub does not come to it, when it next looks at the walk. */
  joined(walk: WalkId): void {
    this.#look(walk);
  }

  /** Says something of a device or of another hub, unless it was said. Nothing waits for it. */
  say(walk: WalkId, word: Word): void {
    this.#do(walk, (book) => this.#sayOnce(walk, book, word));
  }

  /** Makes at once what checkpoints are due; resolves once all that was to be written is written. */
  async settle(): Promise<void> {
    while (this.#work.size > 0 || this.#looks.size > 0) {
      for (const walk of [...this.#looks.keys()]) this.#look(walk);
      await Promise.all(this.#work.values());
    }
  }

  /** Ends it, once all that was to be written is written. */
  async close(): Promise<void> {
    this.#stopFollowing();
    await this.settle();
    this.#isClosed = true;
  }

  get #quiet(): number {
    return this.#parts.quiet ?? QUIET;
  }

  #sayOnce(walk: WalkId, book: WalkBook, { name, data }: Word): Promise<void> {
    return this.#write(walk, book, () => (book.hasSaid(typeOf(name), data) ? null : this.#draft(name, data)));
  }

  #hear(walk: WalkId, count: number): void {
    const fresh = (this.#fresh.get(walk) ?? 0) + count;
    this.#fresh.set(walk, fresh);
    this.#lookSoon(walk, fresh >= MOST_BETWEEN ? 0 : this.#quiet);
  }

  /** Has a walk looked at once nothing has come for so long. */
  #lookSoon(walk: WalkId, pause: number): void {
    if (this.#isClosed) return;
    clearTimeout(this.#looks.get(walk));
    this.#looks.set(walk, setTimeout(() => this.#look(walk), pause).unref());
  }

  #look(walk: WalkId): void {
    clearTimeout(this.#looks.get(walk));
    this.#looks.delete(walk);
    this.#fresh.delete(walk);
    this.#do(walk, (book) => this.#check(walk, book));
  }

  /** Says what is to be said of everybody who is in, and makes a checkpoint where one is due. */
  async #check(walk: WalkId, book: WalkBook): Promise<void> {
    for (const word of this.#parts.ofMembers(walk)) await this.#sayOnce(walk, book, word);
    const isDue = () => book.since >= MOST_BETWEEN || book.isPressing;
    await this.#write(walk, book, () => (isDue() ? this.#draft("checkpoint.made", book.tally()) : null));
    const { engine } = this.#parts;
    await engine.keep.put(markKey(walk), markOf(engine.epoch, book.head));
  }

  #draft<Name extends Draft["name"]>(name: Name, data: FactData<Name>): Draft {
    return {
      name,
      data,
      at: this.#parts.surroundings.now(),
      actor: this.#parts.name.slice(0, LONGEST_NAME),
    } as Draft;
  }

  /** Writes what is to be said by what is in the log, unless that is nothing (any more); before the first of it, what this hub is called. */
  async #write(walk: WalkId, book: WalkBook, say: () => Draft | null): Promise<void> {
    const { engine } = this.#parts;
    const named = { name: this.#parts.name.slice(0, LONGEST_NAME) };
    for (let tries = 0; tries < MOST_TRIES; tries += 1) {
      await book.readOn();
      const isNamed = book.hasSaid(typeOf("hub.named"), named);
      const wanted = say();
      if (!wanted) return;
      const draft = isNamed && book.end ? wanted : this.#draft("hub.named", named);
      const [outcome] = await engine.append(walk, [await this.#entry(walk, book, draft)]);
      if (outcome?.kind === "accepted" && draft === wanted) {
        await book.readOn();
        return;
      }
    }
    throw new EngineTroubleError(message("engine/silent-on-entry"));
  }

  /** The entry of a draft, behind what this hub wrote before. */
  async #entry(walk: WalkId, book: WalkBook, draft: Draft): Promise<Entry> {
    const { key, surroundings } = this.#parts;
    const { source } = this;
    const { end } = book;
    const pen = { source, made: end?.number ?? 0, seen: book.seen, clockOffset: NO_TIME };
    const entry = chainedTo(stamp(draft, walk, pen, surroundings.now()), end, key.publicKey);
    return (await sealed(entry, key)) ?? entry;
  }

  /** Does work on a walk when what was asked for before is done. Trouble stops nothing else: it is told once, and what was due is due at the next occasion. */
  #do(walk: WalkId, work: (book: WalkBook) => Promise<void>): void {
    const before = this.#work.get(walk) ?? Promise.resolve();
    const now = before.then(async () => {
      try {
        const book = this.#bookOf(walk);
        await book.readOn();
        await work(book);
        this.#told = null;
      } catch (cause) {
        // A book that was left in the middle is read anew.
        this.#books.delete(walk);
        const said = words("hub/witness-trouble", { why: saidBy(cause) });
        if (said !== this.#told && !this.#isClosed) this.#parts.tell(said);
        this.#told = said;
      }
      if (this.#work.get(walk) === now) this.#work.delete(walk);
    });
    this.#work.set(walk, now);
  }

  #bookOf(walk: WalkId): WalkBook {
    const { engine } = this.#parts;
    const book = this.#books.get(walk) ?? new WalkBook(engine, walk, () => this.source);
    this.#books.delete(walk);
    this.#books.set(walk, book);
    const [oldest] = this.#books.keys();
    if (oldest !== undefined && this.#books.size > MOST_BOOKS) this.#books.delete(oldest);
    return book;
  }
}

const markOf = (epoch: string, head: number) => `${epoch} ${head}`;
