import type { PushResult, RefusalReason, SequenceGap } from "../../core/link/index.ts";
import type { Entry } from "../../core/log/index.ts";
import type { Instant, WalkId } from "../../core/units/index.ts";
import { inWords, message } from "../../words/index.ts";
import type { AppendOptions, AppendOutcome, Engine, RefusedEntry } from "../engine/index.ts";
import { EngineTroubleError } from "../engine/index.ts";
import type { Surroundings } from "../surroundings/index.ts";
import { roomFor } from "./entry-limits.ts";
import { GapBook } from "./gap-book.ts";
import { type JudgedBy, type Judgement, judgeEntry, type Offerer } from "./judge-entry.ts";

/** Is told what became of entries, for the hub's figures. */
export interface IntakeListener {
  counted(outcome: "accepted" | "known" | RefusalReason): void;
  /** Calls `append` and measures how long it takes. */
  timed<T>(append: () => Promise<T>): Promise<T>;
}

/** What taking entries in needs. */
export interface IntakeParts {
  readonly engine: Engine;
  readonly surroundings: Surroundings;
  readonly listener: IntakeListener;
  readonly isOwn: JudgedBy["isOwn"];
  readonly keyOf: JudgedBy["keyOf"];
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
  readonly #by: Pick<JudgedBy, "isOwn" | "keyOf">;
  readonly #gaps: GapBook;

  constructor({ engine, surroundings, listener, isOwn, keyOf }: IntakeParts) {
    this.#engine = engine;
    this.#surroundings = surroundings;
    this.#listener = listener;
    this.#by = { isOwn, keyOf };
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
    const by = { walk, offerer, now, longest: this.#engine.longestText, ...this.#by };
    const judged = await this.#withinRoom(
      offered.map((value) => judgeEntry(value, by)),
      by,
    );
    const outcomes = await this.#offer(walk, judged, options);
    const there: Entry[] = [];
    const results: PushResult[] = [];
    for (const { entry, refusal } of judged) {
      const outcome = entry && outcomes.get(entry);
      if (!entry || !outcome) {
        if (!refusal) throw new EngineTroubleError(message("engine/silent-on-entry"));
        results.push({ ...refusal, words: inWords(refusal.words), outcome: "refused" });
        // What another hub says of a device of this one may be forged, or all that is left of it: somebody has to look.
        if (entry && refusal.reason === "other-source") {
          await this.#engine.keepRefused(walk, refusedFrom(entry, "other-source", now));
        }
        continue;
      }
      const { source, id } = entry.wire;
      if (outcome.kind === "conflict") {
        await this.#engine.keepRefused(walk, refusedFrom(entry, "conflict", now));
        const words = inWords(message("judge/conflict"));
        results.push({ source, id, outcome: "refused", reason: "conflict", words });
      } else {
        there.push(entry);
        const hlc = outcome.kind === "known" ? outcome.hlc : undefined;
        results.push({ source, id, outcome: outcome.kind, ...(hlc === undefined ? {} : { hlc }) });
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

  /** Refuses what there is no more room for, unless it is kept already. */
  async #withinRoom(
    judged: readonly Judgement[],
    { walk, offerer }: JudgedBy,
  ): Promise<readonly Judgement[]> {
    const written = {
      walk: await this.#engine.lengthOf(walk, null),
      own: offerer ? await this.#engine.lengthOf(walk, offerer.device) : 0,
    };
    let room = roomFor(offerer?.role ?? "owner", written);
    return judged.map((one) => {
      if (!one.entry || one.refusal) return one;
      const { source, id } = one.entry.wire;
      const length = JSON.stringify(one.entry.wire).length;
      if (length > room) {
        return {
          entry: one.entry,
          refusal: { source, id, reason: "limit", words: message("judge/no-room") },
        };
      }
      room -= length;
      return one;
    });
  }

  /** Offers what may be kept to the store and compares the rest with it. Resolves with what became of each entry that the store has by then. */
  async #offer(
    walk: WalkId,
    judged: readonly Judgement[],
    options: AppendOptions,
  ): Promise<ReadonlyMap<Entry, AppendOutcome>> {
    const good = judged.flatMap(({ entry, refusal }) => (entry && !refusal ? [entry] : []));
    const found = new Map<Entry, AppendOutcome>();
    // An empty batch may still carry values to keep.
    if (good.length > 0 || options.alsoKeep) {
      const outcomes = await this.#listener.timed(() => this.#engine.append(walk, good, options));
      for (const [index, outcome] of outcomes.entries()) {
        const entry = good[index];
        if (entry) found.set(entry, outcome);
      }
    }
    const doubtful = judged.flatMap(({ entry, refusal }) => (entry && refusal ? [entry] : []));
    if (doubtful.length > 0) {
      const comparisons = await this.#engine.compare(walk, doubtful);
      for (const [index, entry] of doubtful.entries()) {
        const comparison = comparisons[index];
        if (comparison) found.set(entry, comparison);
      }
    }
    return found;
  }

  close(): void {
    this.#gaps.close();
  }
}

function refusedFrom(entry: Entry, reason: RefusalReason, received: Instant): RefusedEntry {
  return { text: JSON.stringify(entry.wire), reason, received };
}
