import { z } from "zod";
import type { Instant, WalkId } from "../../core/units/index.ts";
import type { Engine, StoredEntry } from "../engine/index.ts";

/** An entry of this hub that the other one is not known to have. */
export interface OutgoingEntry {
  readonly offset: number;
  /** When this hub got it. */
  readonly received: Instant;
}

/** An entry that the other hub found to be ahead of its clock, and when it is offered again. */
export interface EarlyEntry extends OutgoingEntry {
  readonly due: Instant;
}

const outgoingSchema = z.object({
  /** Of the store here, and of the other hub's. */
  epoch: z.string(),
  farEpoch: z.string().nullable(),
  /** Everything up to this offset is settled, except for early entries. */
  mark: z.number().int().min(0),
  /** Up to this offset everything is sent, even what came from the other hub, which has lost some of it. */
  again: z.number().int().min(0),
  early: z.array(z.object({ offset: z.number().int(), received: z.number(), due: z.number() })),
  /** How many entries the other hub refused, and what it said of the last one. */
  refused: z.number().int(),
  words: z.string().nullable(),
});

type OutgoingState = z.output<typeof outgoingSchema>;

/** What became of entries that were offered. */
export interface SettledOffsets {
  /** When they were. */
  readonly round: number;
  readonly offsets: ReadonlySet<number>;
  readonly early: readonly EarlyEntry[];
  /** What the other hub said about the entries that it refused. */
  readonly refusals: readonly string[];
}

/** What the outgoing entries of a walk are made of. */
interface OutgoingParts {
  readonly engine: Engine;
  readonly walk: WalkId;
  /** The name of the other hub. */
  readonly far: string;
  /** Where the state is kept. */
  readonly key: string;
  readonly state: OutgoingState;
}

const PAGE = 500;
const ENOUGH = 1_000_000;

/** The entries of one walk that are to be sent to another hub: everything behind an offset that did not come from there. */
export class Outgoing {
  readonly #engine: Engine;
  readonly #walk: WalkId;
  readonly #far: string;
  readonly #key: string;
  #state: OutgoingState;
  #waiting: OutgoingEntry[] = [];
  #scanned: number;
  #scan: Promise<void> | null = null;
  /** Counts how often the search for outgoing entries restarted. */
  #round = 0;
  /** Resolves when the last change of the state is kept: each change begins with the result of the one before. */
  #changed: Promise<void> = Promise.resolve();

  private constructor({ engine, walk, far, key, state }: OutgoingParts) {
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
    return new Outgoing({ engine, walk, far, key, state: isGood ? kept.data : fresh });
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

  /** Everything that waits to be sent, oldest first, except for early entries. */
  async waiting(): Promise<readonly OutgoingEntry[]> {
    this.#scan ??= this.#look().finally(() => {
      this.#scan = null;
    });
    await this.#scan;
    return this.#waiting;
  }

  /** How often sending began anew with everything. Answers to offers of an earlier round settle nothing. */
  get round(): number {
    return this.#round;
  }

  /** Whether anything was ever settled. */
  get hasSent(): boolean {
    return this.#state.mark > 0;
  }

  /** Reads entries by their offsets, which are in order: the first ones, when together they are over a million characters. */
  async read(offsets: readonly number[]): Promise<readonly StoredEntry[]> {
    const wanted = new Set(offsets);
    const last = offsets.at(-1) ?? 0;
    const found: StoredEntry[] = [];
    let length = 0;
    for (let after = (offsets[0] ?? 1) - 1; after < last; ) {
      const page = await this.#engine.read(this.#walk, after, Math.min(PAGE, last - after));
      const read = page.filter(({ offset }) => wanted.has(offset));
      found.push(...read);
      length += read.reduce((sum, { text }) => sum + text.length, 0);
      if (length > ENOUGH) break;
      const end = page.at(-1);
      if (!end) break;
      after = end.offset;
    }
    return found;
  }

  /** Notes that entries that were offered in a {@link round} are settled, or early; durable when resolved. */
  async settle({ round, offsets, early, refusals }: SettledOffsets): Promise<void> {
    const others = () => this.#waiting.filter(({ offset }) => !offsets.has(offset));
    await this.#change((state) => {
      if (round !== this.#round) return state;
      const mark = (others()[0]?.offset ?? this.#scanned + 1) - 1;
      return {
        ...state,
        mark: Math.max(mark, state.mark),
        early: [...state.early.filter(({ offset }) => !offsets.has(offset)), ...early],
        refused: state.refused + refusals.length,
        words: refusals.at(-1) ?? state.words,
      };
    });
    // Only now: what could not be kept is offered again.
    if (round === this.#round) this.#waiting = others();
  }

  /** Notes the epoch of the other hub's store. Resolves with true when it is another than before, so that the store may have lost what it had. */
  async meets(farEpoch: string): Promise<boolean> {
    if (this.#state.farEpoch === farEpoch) return false;
    const head = await this.#engine.head(this.#walk);
    let isAnother = false;
    await this.#change((state) => {
      isAnother = state.farEpoch !== null && state.farEpoch !== farEpoch;
      if (!isAnother) return { ...state, farEpoch };
      // At once: an answer that comes while this is being kept belongs to what was.
      this.#round += 1;
      [this.#waiting, this.#scanned] = [[], 0];
      return { ...state, farEpoch, again: head, mark: 0, early: [] };
    });
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
      if (page.length === 0) return;
    }
  }

  #change(change: (state: OutgoingState) => OutgoingState): Promise<void> {
    const changing = this.#changed.then(async () => {
      const state = change(this.#state);
      if (state === this.#state) return;
      await this.#engine.keep.put(this.#key, JSON.stringify(state));
      this.#state = state;
    });
    this.#changed = changing.catch(() => {});
    return changing;
  }
}
