import type { SequenceGap } from "../../core/link/index.ts";
import type { WalkId } from "../../core/units/index.ts";
import type { Engine } from "../engine/index.ts";
import { SequenceRanges } from "./sequence-ranges.ts";

const PAGE = 1000;

interface WalkBook {
  readonly sources: Map<string, SequenceRanges>;
  readonly read: Promise<void>;
}

const digits = (number: bigint) => String(number).padStart(10, "0");

/**
 * Which numbers of each source's sequence a walk has. A walk's book is read from the engine when it is first asked for,
 * and follows what this and other hubs append from then on; a number told twice counts once, so order does not matter.
 */
export class GapBook {
  readonly #engine: Engine;
  readonly #walks = new Map<WalkId, WalkBook>();
  readonly #stopFollowing: () => void;

  constructor(engine: Engine) {
    this.#engine = engine;
    this.#stopFollowing = engine.follow((walk, kept) => this.#note(walk, kept));
  }

  /** What is missing of some sources of a walk, counting `appended` as there whether or not the engine has told of it. */
  async gaps(
    walk: WalkId,
    appended: readonly { readonly source: string; readonly sequence: string }[],
  ): Promise<SequenceGap[]> {
    const { read, sources } = this.#open(walk);
    this.#note(walk, appended);
    await read;
    return [...new Set(appended.map(({ source }) => source))].flatMap((source) =>
      (sources.get(source)?.missing() ?? []).map(({ from, to }) => ({
        source,
        from: digits(from),
        to: digits(to),
      })),
    );
  }

  close(): void {
    this.#stopFollowing();
  }

  #open(walk: WalkId): WalkBook {
    const open = this.#walks.get(walk);
    if (open) return open;
    const book = { sources: new Map<string, SequenceRanges>(), read: this.#read(walk) };
    this.#walks.set(walk, book);
    // A book that could not be read is read again at the next request.
    book.read.catch(() => this.#walks.delete(walk));
    return book;
  }

  async #read(walk: WalkId): Promise<void> {
    for (let after = 0; ; ) {
      const page = await this.#engine.read(walk, after, PAGE);
      this.#note(walk, page);
      const last = page.at(-1);
      if (!last) return;
      after = last.offset;
    }
  }

  #note(walk: WalkId, kept: readonly { readonly source: string; readonly sequence: string }[]): void {
    const sources = this.#walks.get(walk)?.sources;
    if (!sources) return;
    for (const { source, sequence } of kept) {
      let ranges = sources.get(source);
      if (!ranges) {
        ranges = new SequenceRanges();
        sources.set(source, ranges);
      }
      ranges.add(BigInt(sequence));
    }
  }
}
