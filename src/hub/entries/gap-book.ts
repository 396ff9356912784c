import type { SequenceGap } from "../../core/link/index.ts";
import type { WalkId } from "../../core/units/index.ts";
import type { Engine } from "../engine/index.ts";
import { SequenceRanges } from "./sequence-ranges.ts";

/** Books are forgotten all at once when there are more, and read again when they are needed. */
const MOST_BOOKS = 10_000;
/** The most gaps that are told at once of one source. */
const MOST_TOLD = 1_000;

interface SourceBook {
  readonly ranges: SequenceRanges;
  readonly read: Promise<void>;
}

interface Numbered {
  readonly source: string;
  readonly sequence: string;
}

const digits = (number: bigint) => String(number).padStart(10, "0");
const keyOf = (walk: WalkId, source: string) => `${source} ${walk}`;

/**
 * Which numbers of each source's sequence a walk has. A source's book is read from the engine when it is first asked for,
 * by its numbers alone, and follows what this and other hubs append from then on; a number told twice counts once, so
 * order does not matter.
 */
export class GapBook {
  readonly #engine: Engine;
  readonly #books = new Map<string, SourceBook>();
  readonly #stopFollowing: () => void;

  constructor(engine: Engine) {
    this.#engine = engine;
    this.#stopFollowing = engine.follow((walk, kept) => this.#note(walk, kept));
  }

  /**
   * What is missing of some sources of a walk, the first thousand of each, counting `appended` as there whether or not the
   * engine has told of it.
   */
  async gaps(walk: WalkId, appended: readonly Numbered[]): Promise<SequenceGap[]> {
    if (this.#books.size > MOST_BOOKS) this.#books.clear();
    const sources = [...new Set(appended.map(({ source }) => source))];
    const books = sources.map((source) => ({ source, ...this.#open(walk, source) }));
    this.#note(walk, appended);
    await Promise.all(books.map(({ read }) => read));
    return books.flatMap(({ source, ranges }) =>
      ranges
        .missing()
        .slice(0, MOST_TOLD)
        .map(({ from, to }) => ({ source, from: digits(from), to: digits(to) })),
    );
  }

  close(): void {
    this.#stopFollowing();
  }

  #open(walk: WalkId, source: string): SourceBook {
    const key = keyOf(walk, source);
    const open = this.#books.get(key);
    if (open) return open;
    const ranges = new SequenceRanges();
    const book = { ranges, read: this.#read(walk, source, ranges) };
    this.#books.set(key, book);
    // A book that could not be read is read again at the next request.
    book.read.catch(() => this.#books.delete(key));
    return book;
  }

  async #read(walk: WalkId, source: string, ranges: SequenceRanges): Promise<void> {
    for (const sequence of await this.#engine.sequencesOf(walk, source)) ranges.add(BigInt(sequence));
  }

  #note(walk: WalkId, kept: readonly Numbered[]): void {
    for (const { source, sequence } of kept)
      this.#books.get(keyOf(walk, source))?.ranges.add(BigInt(sequence));
  }
}
