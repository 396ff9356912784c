import { once } from "node:events";
import type { ServerResponse } from "node:http";
import type { Cursor } from "../../core/link/index.ts";
import type { Sight } from "../curtain/index.ts";
import type { StoredEntry } from "../engine/index.ts";
import { cursorText, entriesText } from "./event-text.ts";

/** A subscriber with more unread bytes than this is cut off. It can reconnect and continue from where it was. */
const MOST_BUFFERED = 4 * 1024 * 1024;
/** How many entries are read at once; the engine gives fewer when they are large. */
const PAGE = 200;
/** How many new entries are remembered while a subscriber reads what was stored before; when there are more, it reads them from the store too. */
const MOST_QUEUED = 1000;

/** Reads entries behind an offset, at most so many. */
export type ReadEntries = (after: number, limit: number) => Promise<readonly StoredEntry[]>;

/** How a reader is told how far it has read. */
export interface CursorTeller {
  /** The cursor behind an entry. */
  readonly behind: (last: StoredEntry) => Cursor;
  /** The cursor at an offset of the log. */
  readonly at: (offset: number) => Promise<Cursor>;
}

/** One open stream of events: first it is sent the entries that are stored, then those that are appended. */
export class Subscriber {
  readonly #response: ServerResponse;
  readonly #cursors: CursorTeller;
  readonly #withholds: (entry: StoredEntry) => boolean;
  readonly #sight: Sight | null;
  #read: ReadEntries = async () => [];
  /** The offset up to which the reader was sent everything. */
  #sent = 0;
  #isLive = false;
  #queue: StoredEntry[] = [];
  #hasOverrun = false;
  /** Bytes of what was sent last, which alone may be more than a subscriber may leave unread. */
  #lastSize = 0;
  readonly #ended = new AbortController();

  /**
   * `relay` names the hub that reads, `null` stands for a device. A hub is not sent what it brought itself, unless it reads from the
   * beginning. `sight` is what a device sees, `null` for everything.
   */
  constructor(response: ServerResponse, cursors: CursorTeller, relay: string | null, sight: Sight | null) {
    this.#response = response;
    this.#cursors = cursors;
    this.#sight = sight;
    this.#withholds = relay === null ? () => false : ({ via }) => via === relay;
    response.once("close", () => this.#ended.abort());
  }

  /** Whether everything that was stored before has been sent. */
  get isLive(): boolean {
    return this.#isLive;
  }

  /** Takes entries that were appended; `shared` is their text for everybody from whom nothing is withheld. */
  hear(kept: readonly StoredEntry[], shared: Buffer): void {
    if (!this.#isLive) {
      this.#remember(kept);
      return;
    }
    if (this.#sight && !this.#sight.isPlain(kept)) {
      this.#isLive = false;
      this.catchUp(this.#read, this.#sent).catch(() => this.#response.destroy());
      return;
    }
    this.#sent = kept.at(-1)?.offset ?? this.#sent;
    if (kept.some(this.#withholds)) this.write(this.#textOf(kept, this.#withholds));
    else this.write(shared);
  }

  /** Sends everything that is stored behind an offset; from there on the stream is live. */
  async catchUp(read: ReadEntries, after: number): Promise<void> {
    // A hub that reads from the beginning may have lost the entries it brought itself, so send those too.
    const withholds = after === 0 ? () => false : this.#withholds;
    this.#read = read;
    this.#sent = after;
    const start = cursorText(await this.#cursors.at(after));
    let hasTold = false;
    while (!this.#ended.signal.aborted) {
      this.#hasOverrun = false;
      const page = await read(this.#sent, PAGE);
      const seen = (await this.#sight?.of(page)) ?? page;
      this.#send(this.#textOf(page, withholds, seen));
      hasTold ||= page.length > 0;
      this.#sent = page.at(-1)?.offset ?? this.#sent;
      if (page.length > 0 || this.#hasOverrun) {
        await this.#drained();
        continue;
      }
      const queued = this.#queue.filter(({ offset }) => offset > this.#sent);
      this.#queue = [];
      if (this.#sight && !this.#sight.isPlain(queued)) continue;
      if (!hasTold) this.#send(start);
      this.#send(this.#textOf(queued, withholds));
      this.#sent = queued.at(-1)?.offset ?? this.#sent;
      this.#isLive = true;
      return;
    }
  }

  /** Sends text; cuts the subscriber off when it has too much unread. */
  write(text: string | Buffer): void {
    // A large text alone cuts nobody off, neither before this write nor with it.
    if (this.#response.writableLength > MOST_BUFFERED + this.#lastSize) this.#response.destroy();
    else this.#send(text);
  }

  /** Ends the stream. */
  end(): void {
    if (!this.#ended.signal.aborted) this.#response.end();
  }

  #textOf(
    kept: readonly StoredEntry[],
    withholds: (entry: StoredEntry) => boolean,
    seen: readonly StoredEntry[] = kept,
  ): string {
    const sent = seen.filter((entry) => !withholds(entry));
    return entriesText(kept, this.#cursors.behind, sent);
  }

  #send(text: string | Buffer): void {
    if (this.#ended.signal.aborted || text.length === 0) return;
    if (text.length > MOST_BUFFERED || this.#response.writableLength === 0) this.#lastSize = text.length;
    this.#response.write(text);
  }

  #remember(kept: readonly StoredEntry[]): void {
    this.#queue.push(...kept);
    if (this.#queue.length <= MOST_QUEUED) return;
    this.#queue = [];
    this.#hasOverrun = true;
  }

  async #drained(): Promise<void> {
    if (!this.#response.writableNeedDrain) return;
    await once(this.#response, "drain", { signal: this.#ended.signal }).catch(() => {});
  }
}
