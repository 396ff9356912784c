import type { Entry, HybridTime, PlaceInOrder, WireEntry } from "../../core/log/index.ts";
import { compareEntries, jsonOf, laterOf } from "../../core/log/index.ts";
import type { ChainEnd, LinkedPlace } from "../../core/seal/index.ts";
import { chainEndOf, linkOf, tallyOf } from "../../core/seal/index.ts";
import type { WalkId } from "../../core/units/index.ts";
import type { Engine, StoredEntry } from "../engine/index.ts";

const PAGE = 500;

/** What of an entry a book needs: it is in the store, so that it was read as an entry before. */
type Kept = Pick<Entry, "wire">;

/** What a hub knows of the log of one walk, for what it writes of itself. It is read from the store, and read on when it is asked. */
export class WalkBook {
  readonly #walk: WalkId;
  readonly #engine: Engine;
  /** The source under which this hub writes. */
  readonly #source: () => string;
  #read = 0;
  /** By source and number. Of two entries under one number the first is held. */
  readonly #held = new Map<string, LinkedPlace>();
  #end: (ChainEnd & { readonly source: string }) | null = null;
  readonly #said = new Map<string, string>();
  #seen: HybridTime | null = null;
  #closing: { readonly place: PlaceInOrder; readonly isClosed: boolean } | null = null;
  #checkpoint: HybridTime | null = null;
  #since = 0;
  #isLate = false;

  constructor(engine: Engine, walk: WalkId, source: () => string) {
    this.#engine = engine;
    this.#walk = walk;
    this.#source = source;
  }

  /** Reads what came since the last time. */
  async readOn(): Promise<void> {
    for (;;) {
      const page = await this.#engine.read(this.#walk, this.#read, PAGE);
      for (const stored of page) this.#note(stored);
      if (page.length === 0) return;
    }
  }

  /** How far the log was read. */
  get head(): number {
    return this.#read;
  }

  /** The latest hybrid time in the walk. */
  get seen(): HybridTime | null {
    return this.#seen;
  }

  /** Where the chain of this hub's source ends; `null` when it wrote nothing under it. */
  get end(): ChainEnd | null {
    return this.#end?.source === this.#source() ? this.#end : null;
  }

  /** Whether this is what this hub's source said last: of that device or hub, with a key or without one; or of itself. */
  hasSaid(type: string, data: object): boolean {
    return this.#said.get(slotOf({ source: this.#source(), type, data })) === JSON.stringify(data);
  }

  /** How many entries came since this hub's last checkpoint, checkpoints not counted. */
  get since(): number {
    return this.#since;
  }

  /** Whether there is reason for a checkpoint before many entries have come: the walk is closed, or something came late. */
  get isPressing(): boolean {
    return this.#since > 0 && (this.#isLate || (this.#closing?.isClosed ?? false));
  }

  /** What is held by now ([SEL5]). */
  tally() {
    return tallyOf([...this.#held.values()]);
  }

  #note({ text, offset }: StoredEntry): void {
    this.#read = offset;
    const wire = jsonOf(text) as WireEntry;
    const { hlc, source, sequence, id, type } = wire;
    const place: PlaceInOrder = { wire: { hlc, source, sequence, id } };
    const number = Number(sequence);
    const key = `${source} ${number}`;
    const link = linkOf(wire);
    if (link && !this.#held.has(key)) this.#held.set(key, { entry: place, number, link });
    this.#seen = laterOf(this.#seen, hlc as HybridTime);
    const isOwn = source === this.#source();
    if (isOwn) this.#noteOwn({ wire });
    if (type === "tetherline.walk.closed" || type === "tetherline.walk.reopened") {
      const isLast = this.#closing === null || compareEntries(this.#closing.place, place) < 0;
      if (isLast) this.#closing = { place, isClosed: type === "tetherline.walk.closed" };
    }
    if (type === "tetherline.checkpoint.made") {
      if (isOwn) [this.#checkpoint, this.#since, this.#isLate] = [hlc as HybridTime, 0, false];
      return;
    }
    this.#since += 1;
    if (this.#checkpoint !== null && hlc < this.#checkpoint) this.#isLate = true;
  }

  #noteOwn({ wire }: Kept): void {
    const { source, type, data } = wire;
    const end = chainEndOf({ wire });
    if (end.number > (this.end?.number ?? 0)) this.#end = { ...end, source };
    if (type === "tetherline.checkpoint.made") return;
    this.#said.set(slotOf(wire), JSON.stringify(data));
  }
}

/** What two words have in common of which the later one counts. A device is known with a key, and may besides have written without seals. */
function slotOf({ source, type, data }: Pick<WireEntry, "source" | "type" | "data">): string {
  const { source: about = "", key = "" } = (data ?? {}) as { source?: unknown; key?: unknown };
  return [source, type, about, key === null].join(" ");
}
