import type { Entry } from "../log/index.ts";
import type { Cursor } from "./cursor.ts";

/** Something that came down a stream, and how far the stream is read with it. */
interface Heard {
  readonly entry: Entry | null;
  readonly cursor: Cursor;
}

/** What an inbox is made of. */
export interface InboxParts {
  /** Keeps a batch together with how far the stream is read with it. */
  readonly keep: (entries: readonly Entry[], cursor: Cursor) => Promise<void>;
  /** Is told of the first failure to keep a batch; nothing is kept after it. */
  readonly onFailure: (error: unknown) => void;
  /** Entries in a batch, at most. */
  readonly largest: number;
}

/**
 * What a stream brought and is not yet kept. Taking in begins in the same turn; whatever comes while one batch is being
 * kept goes into the next, so that a long log needs few transactions and a single entry is not delayed.
 */
export class Inbox {
  readonly #keep: InboxParts["keep"];
  readonly #onFailure: InboxParts["onFailure"];
  readonly #largest: number;
  #waiting: Heard[] = [];
  #work: Promise<void> | null = null;
  #hasFailed = false;

  constructor({ keep, onFailure, largest }: InboxParts) {
    this.#keep = keep;
    this.#onFailure = onFailure;
    this.#largest = largest;
  }

  /** Adds what came down the stream: an entry, or `null` where only the cursor moved. */
  put(entry: Entry | null, cursor: Cursor): void {
    if (this.#hasFailed) return;
    this.#waiting.push({ entry, cursor });
    this.#work ??= this.#empty();
  }

  /** Resolves once all is kept, or failed. */
  async emptied(): Promise<void> {
    while (this.#work) await this.#work;
  }

  async #empty(): Promise<void> {
    // What else comes in this turn goes with it.
    await null;
    try {
      while (this.#waiting.length > 0) {
        const batch = this.#waiting.splice(0, this.#largest);
        const last = batch.at(-1);
        if (last)
          await this.#keep(
            batch.flatMap(({ entry }) => (entry ? [entry] : [])),
            last.cursor,
          );
      }
    } catch (error) {
      this.#hasFailed = true;
      this.#waiting = [];
      this.#onFailure(error);
    } finally {
      this.#work = null;
    }
  }
}
