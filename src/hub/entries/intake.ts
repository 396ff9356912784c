import type { Entry, PushResult, Refusal, SequenceGap } from "../../core/log/index.ts";
import type { WalkId } from "../../core/units/index.ts";
import type { AppendOptions, Engine } from "../engine/index.ts";
import { EngineTroubleError } from "../engine/index.ts";
import type { Surroundings } from "../surroundings/index.ts";
import { GapBook } from "./gap-book.ts";
import { judgeEntry, type Offerer } from "./judge-entry.ts";

/** Hears what became of entries, for the figures. */
export interface IntakeListener {
  counted(outcome: "accepted" | "known" | Refusal): void;
  /** Calls `append` and takes its time. */
  timed<T>(append: () => Promise<T>): Promise<T>;
}

/** What became of a batch: a result for each value offered, in its order. */
export interface TakenBatch {
  readonly results: readonly PushResult[];
  readonly gaps: readonly SequenceGap[];
}

/** Takes entries in: judges each, keeps those that may be kept, and tells what became of all. */
export class Intake {
  readonly #engine: Engine;
  readonly #surroundings: Surroundings;
  readonly #listener: IntakeListener;
  readonly #gaps: GapBook;

  constructor(engine: Engine, surroundings: Surroundings, listener: IntakeListener) {
    this.#engine = engine;
    this.#surroundings = surroundings;
    this.#listener = listener;
    this.#gaps = new GapBook(engine);
  }

  /** Takes in what was offered for a walk; resolved once all that was accepted is durable. */
  async take(
    walk: WalkId,
    offered: readonly unknown[],
    offerer: Offerer,
    options: AppendOptions = {},
  ): Promise<TakenBatch> {
    const now = this.#surroundings.now();
    const judged = offered.map((value) => judgeEntry(value, walk, offerer, now));
    const good = judged.flatMap(({ entry }) => (entry ? [entry] : []));
    // An empty batch may still carry marks.
    const outcomes =
      good.length > 0 || options.marks
        ? await this.#listener.timed(() => this.#engine.append(walk, good, options))
        : [];
    let next = 0;
    const there: Entry[] = [];
    const results: PushResult[] = [];
    for (const { entry, refusal } of judged) {
      if (!entry) {
        results.push({ ...refusal, outcome: "refused" });
        continue;
      }
      const kind = outcomes[next]?.kind;
      if (kind === undefined) throw new EngineTroubleError("The store did not say what became of an entry.");
      next += 1;
      const { source, id } = entry.wire;
      if (kind === "conflict") {
        await this.#engine.keepRefused(walk, {
          text: JSON.stringify(entry.wire),
          reason: "conflict",
          received: now,
        });
        const words = "Another entry with this source and id is here already; this one is kept aside.";
        results.push({ source, id, outcome: "refused", reason: "conflict", words });
      } else {
        there.push(entry);
        results.push({ source, id, outcome: kind });
      }
    }
    for (const result of results) {
      this.#listener.counted(result.outcome === "refused" ? result.reason : result.outcome);
    }
    return {
      results,
      gaps: await this.#gaps.gaps(
        walk,
        there.map(({ wire }) => wire),
      ),
    };
  }

  close(): void {
    this.#gaps.close();
  }
}
