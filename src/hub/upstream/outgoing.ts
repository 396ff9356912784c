import { z } from "zod";
import type { Instant, WalkId } from "../../core/units/index.ts";
import type { Engine, KeptEntry } from "../engine/index.ts";

/** An entry of this hub that the other one has not been heard to have. */
export interface OutgoingEntry {
  readonly offset: number;
  /** When this hub got it. */
  readonly received: Instant;
}

/** One that the other hub found to be ahead of its clock, and when it is offered again. */
export interface EarlyEntry extends OutgoingEntry {
  readonly due: Instant;
}

const outgoingSchema = z.object({
  /** Of the store here, and of the other hub's. */
  epoch: z.string(),
  farEpoch: z.string().nullable(),
  /** All up to here is settled, but for what is early. */
  mark: z.number().int().min(0),
  /** Up to here everything goes, also what came from over there: the other hub lost some of it. */
  again: z.number().int().min(0),
  early: z.array(z.object({ offset: z.number().int(), received: z.number(), due: z.number() })),
  /** How many it would not have, and what it said of the last. */
  refused: z.number().int(),
  words: z.string().nullable(),
});

const PAGE = 500;

/** What is to go to another hub of one walk: everything behind a mark that did not come from there. */
export class Outgoing {
  readonly #engine: Engine;
  readonly #walk: WalkId;
  readonly #far: string;
  readonly #key: string;
  #state: z.output<typeof outgoingSchema>;
  #waiting: OutgoingEntry[] = [];
  #scanned: number;
  #scan: Promise<void> | null = null;
  /** Counts how often looking began anew. */
  #round = 0;

  private constructor(
    engine: Engine,
    walk: WalkId,
    far: string,
    key: string,
    state: z.output<typeof outgoingSchema>,
  ) {
    this.#engine = engine;
    this.#walk = walk;
    this.#far = far;
    this.#key = key;
    this.#state = state;
    this.#scanned = state.mark;
  }

  /** `far` is the name of the other hub. */
  static async open(engine: Engine, walk: WalkId, far: string): Promise<Outgoing> {
    const key = `upstream.out ${far} ${walk}`;
    const kept = outgoingSchema.safeParse(JSON.parse((await engine.keep.get(key)) ?? "null"));
    const fresh = {
      epoch: engine.epoch,
      farEpoch: null,
      mark: 0,
      again: 0,
      early: [],
      refused: 0,
      words: null,
    };
    const isGood = kept.success && kept.data.epoch === engine.epoch;
    return new Outgoing(engine, walk, far, key, isGood ? kept.data : fresh);
  }

  get refused(): number {
    return this.#state.refused;
  }

  /** What the other hub said of the last entry that it would not have; `null` when it took all. */
  get words(): string | null {
    return this.#state.words;
  }

  get early(): readonly EarlyEntry[] {
    return this.#state.early as unknown as readonly EarlyEntry[];
  }

  /** Everything that waits, oldest first, but for what is early. */
  async waiting(): Promise<readonly OutgoingEntry[]> {
    this.#scan ??= this.#look().finally(() => {
      this.#scan = null;
    });
    await this.#scan;
    return this.#waiting;
  }

  /** Whether anything was ever settled. */
  get hasSent(): boolean {
    return this.#state.mark > 0;
  }

  /** Reads entries by their offsets, which are in order. */
  async read(offsets: readonly number[]): Promise<readonly KeptEntry[]> {
    const wanted = new Set(offsets);
    const last = offsets.at(-1) ?? 0;
    const found: KeptEntry[] = [];
    for (let after = (offsets[0] ?? 1) - 1; after < last; ) {
      const page = await this.#engine.read(this.#walk, after, Math.min(PAGE, last - after));
      found.push(...page.filter(({ offset }) => wanted.has(offset)));
      const end = page.at(-1);
      if (!end) break;
      after = end.offset;
    }
    return found;
  }

  /** Notes that entries are settled, or early; durable when resolved. */
  async settle(
    offsets: ReadonlySet<number>,
    early: readonly EarlyEntry[],
    refusals: readonly string[],
  ): Promise<void> {
    this.#waiting = this.#waiting.filter(({ offset }) => !offsets.has(offset));
    const mark = (this.#waiting[0]?.offset ?? this.#scanned + 1) - 1;
    await this.#put({
      ...this.#state,
      mark: Math.max(mark, this.#state.mark),
      early: [...this.#state.early.filter(({ offset }) => !offsets.has(offset)), ...early],
      refused: this.#state.refused + refusals.length,
      words: refusals.at(-1) ?? this.#state.words,
    });
  }

  /** The other hub's store is of this epoch; of another than before, it may have lost what it had. True when it may. */
  async meets(farEpoch: string): Promise<boolean> {
    const { farEpoch: before } = this.#state;
    if (before === farEpoch) return false;
    const isAnother = before !== null;
    const again = isAnother ? await this.#engine.head(this.#walk) : this.#state.again;
    await this.#put({ ...this.#state, farEpoch, again, ...(isAnother ? { mark: 0, early: [] } : {}) });
    if (isAnother) {
      this.#round += 1;
      [this.#waiting, this.#scanned] = [[], 0];
    }
    return isAnother;
  }

  async #look(): Promise<void> {
    for (;;) {
      const round = this.#round;
      const page = await this.#engine.read(this.#walk, this.#scanned, PAGE);
      if (round !== this.#round) continue;
      for (const { offset, received, via } of page) {
        if (via !== this.#far || offset <= this.#state.again) this.#waiting.push({ offset, received });
        this.#scanned = offset;
      }
      if (page.length < PAGE) return;
    }
  }

  async #put(state: z.output<typeof outgoingSchema>): Promise<void> {
    await this.#engine.keep.put(this.#key, JSON.stringify(state));
    this.#state = state;
  }
}
