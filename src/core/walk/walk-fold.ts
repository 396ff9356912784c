import type { Entry } from "../log/index.ts";
import { compareEntries, keyOf, mergeEntries } from "../log/index.ts";
import type { Instant } from "../units/index.ts";
import { applyEntry } from "./apply-entry.ts";
import type { ClockReading, DeviceClocks } from "./device-clocks.ts";
import { corrected, deviceClocks } from "./device-clocks.ts";
import type { Deviation, IgnoredEntry, Ledger } from "./ledger.ts";
import type { Strikes } from "./strikes.ts";
import { strikesOf } from "./strikes.ts";

/** What a log folds into: a pure function of the set of its entries ([LOG3]). */
export interface Folded {
  /** `null` until the walk was opened. */
  readonly ledger: Ledger | null;
  /** Entries without effect, in the order of the log; conflicting ones last. */
  readonly ignored: readonly IgnoredEntry[];
  /** Deviations in the order of the log, struck entries included. */
  readonly deviations: readonly Deviation[];
  /** All entries in order, struck ones included. */
  readonly entries: readonly Entry[];
  /** Key of each struck entry → the strike. */
  readonly struck: ReadonlyMap<string, Entry>;
  /** The latest time at which any entry says something happened; `null` for an empty log. */
  readonly lastAt: Instant | null;
  /** How the clocks of devices stood against a hub's, in the order of the log. */
  readonly clocks: readonly ClockReading[];
}

/** How the times of entries are read. */
export interface FoldOptions {
  /** As the devices had them, instead of corrected by what is known of their clocks. */
  readonly asEntered?: boolean;
}

/** The ledger behind an entry, and why the entry had no effect, if it had none. */
interface Step {
  readonly ledger: Ledger | null;
  readonly ignored: string | null;
  /** When it happened, by the hub's clock as far as that is known. */
  readonly at: Instant;
}

const NO_CLOCKS: DeviceClocks = deviceClocks([]);

const NO_STRIKES: Strikes = { struck: new Map(), idle: new Map() };

/**
 * A log being folded. A new entry at the end costs its own step only. The ledger behind every entry is kept (ledgers share
 * what did not change), so a late entry, or a strike, folds again only from where it stands in the order.
 */
export class WalkFold {
  #entries: Entry[] = [];
  #steps: Step[] = [];
  #conflicting: readonly Entry[] = [];
  readonly #byKey = new Map<string, Entry>();
  #strikes: Strikes = NO_STRIKES;
  #strikeEntries: Entry[] = [];
  #clocks: DeviceClocks = NO_CLOCKS;
  readonly #asEntered: boolean;

  constructor({ asEntered = false }: FoldOptions = {}) {
    this.#asEntered = asEntered;
  }

  /** Takes entries in, in any order; those already known change nothing. Returns how many entries had to be folded. */
  add(incoming: Iterable<Entry>): number {
    const fresh: Entry[] = [];
    const doubled: Entry[] = [];
    for (const entry of incoming) {
      const known = this.#byKey.get(keyOf(entry));
      if (!known) {
        this.#byKey.set(keyOf(entry), entry);
        fresh.push(entry);
      } else if (known.wire !== entry.wire) doubled.push(entry);
    }
    if (doubled.length > 0)
      return this.#startOver([...this.#entries, ...this.#conflicting, ...fresh, ...doubled], fresh.length);
    if (fresh.length === 0) return 0;
    fresh.sort(compareEntries);
    const [first] = fresh;
    const last = this.#entries.at(-1);
    let from = this.#entries.length;
    if (first && last && compareEntries(first, last) < 0) {
      from = this.#positionOf(first);
      this.#entries = [...this.#entries, ...fresh].sort(compareEntries);
    } else this.#entries.push(...fresh);
    return this.#foldFrom(Math.min(from, this.#takeStrikes(fresh), this.#takeClocks(fresh)));
  }

  /** The state as folded so far. */
  get folded(): Folded {
    const ledger = this.#steps.at(-1)?.ledger ?? null;
    return {
      ledger,
      ignored: this.#ignored(),
      deviations: this.#deviations(ledger),
      entries: this.#entries,
      struck: this.#strikes.struck,
      lastAt: this.#steps.reduce<Instant | null>(
        (last, { at }) => (last === null || at > last ? at : last),
        null,
      ),
      clocks: this.#clocks.readings,
    };
  }

  /** Only when entries disagree under one key: the whole set is merged again, so that the order of arrival cannot matter. */
  #startOver(all: readonly Entry[], fresh: number): number {
    const { ordered, conflicting } = mergeEntries(all);
    const isSame =
      fresh === 0 &&
      conflicting.length === this.#conflicting.length &&
      ordered.every((entry, index) => entry === this.#entries[index]);
    if (isSame) return 0;
    this.#entries = [...ordered];
    this.#conflicting = conflicting;
    this.#byKey.clear();
    for (const entry of ordered) this.#byKey.set(keyOf(entry), entry);
    this.#strikeEntries = [];
    this.#takeStrikes(ordered);
    this.#clocks = deviceClocks(ordered);
    return this.#foldFrom(0);
  }

  /** Index of the first entry that does not stand before `entry`. */
  #positionOf(entry: Entry): number {
    let [low, high] = [0, this.#entries.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      const at = this.#entries[middle];
      if (at && compareEntries(at, entry) < 0) low = middle + 1;
      else high = middle;
    }
    return low;
  }

  /** Works out again which entries are struck when strikes, or entries a strike may have been waiting for, came in. Returns the first position it changes. */
  #takeStrikes(fresh: readonly Entry[]): number {
    const strikes = fresh.filter(({ read }) => read.fact?.name === "entry.struck");
    if (strikes.length === 0 && this.#strikeEntries.length === 0) return Number.POSITIVE_INFINITY;
    this.#strikeEntries = [...this.#strikeEntries, ...strikes].sort(compareEntries);
    const before = this.#strikes.struck;
    this.#strikes = strikesOf(this.#strikeEntries, (key) => this.#byKey.get(key));
    const after = this.#strikes.struck;
    let from = Number.POSITIVE_INFINITY;
    for (const key of new Set([...before.keys(), ...after.keys()])) {
      if (before.has(key) === after.has(key)) continue;
      const target = this.#byKey.get(key);
      if (target) from = Math.min(from, this.#positionOf(target));
    }
    return from;
  }

  /** Takes in how devices' clocks stood. Returns the first position it changes: all times of a device may move. */
  #takeClocks(fresh: readonly Entry[]): number {
    if (!fresh.some(({ read }) => read.fact?.name === "clock.compared")) return Number.POSITIVE_INFINITY;
    const before = this.#clocks;
    this.#clocks = deviceClocks([...before.readings.map(({ entry }) => entry), ...fresh]);
    if (this.#asEntered) return Number.POSITIVE_INFINITY;
    const moved = this.#entries.findIndex(
      (entry) => before.clockOffsetOf(entry) !== this.#clocks.clockOffsetOf(entry),
    );
    return moved === -1 ? Number.POSITIVE_INFINITY : moved;
  }

  #foldFrom(from: number): number {
    this.#steps.length = Math.min(from, this.#steps.length);
    let ledger = this.#steps.at(-1)?.ledger ?? null;
    const start = this.#steps.length;
    for (let index = start; index < this.#entries.length; index += 1) {
      const entry = this.#entries[index];
      if (!entry) break;
      const step = this.#stepFor(ledger, entry);
      ledger = step.ledger;
      this.#steps.push(step);
    }
    return this.#entries.length - start;
  }

  #stepFor(ledger: Ledger | null, entry: Entry): Step {
    const inTime = this.#asEntered ? entry : corrected(entry, this.#clocks);
    const { at } = inTime;
    if (this.#strikes.struck.has(keyOf(entry))) return { ledger, ignored: null, at };
    // Whether a strike is idle may change without folding again, so its reason is looked up when asked for.
    if (entry.read.fact?.name === "entry.struck") return { ledger, ignored: null, at };
    const result = applyEntry(ledger, inTime);
    return { ledger: result.ledger ?? ledger, ignored: result.ignored, at };
  }

  #ignored(): IgnoredEntry[] {
    const found: IgnoredEntry[] = [];
    const { idle } = this.#strikes;
    for (const [index, { ignored }] of this.#steps.entries()) {
      const entry = this.#entries[index];
      const reason = ignored ?? (idle.size > 0 && entry ? idle.get(keyOf(entry)) : undefined);
      if (entry && reason !== undefined) found.push({ source: entry.wire.source, id: entry.wire.id, reason });
    }
    for (const { wire } of this.#conflicting) {
      found.push({
        source: wire.source,
        id: wire.id,
        reason: "another, different entry has the same source and id",
      });
    }
    return found;
  }

  #deviations(ledger: Ledger | null): Deviation[] {
    const struck = [...this.#strikes.struck].map(([key, strike]): Deviation => {
      const target = this.#byKey.get(key);
      const fact = target?.read.fact;
      const step = fact && "step" in fact ? (fact.step ?? null) : null;
      const reason = strike.read.fact?.name === "entry.struck" ? strike.read.fact.reason : undefined;
      const what = target ? target.wire.type.replace("tetherline.", "") : key;
      return {
        kind: "struck",
        step,
        text: reason ? `Struck ${what}: ${reason}` : `Struck ${what}`,
        at: strike.at,
      };
    });
    return [...(ledger?.deviations ?? []), ...struck];
  }
}

/** Folds a set of entries in one go. */
export function foldLog(entries: Iterable<Entry>, options: FoldOptions = {}): Folded {
  const fold = new WalkFold(options);
  fold.add(entries);
  return fold.folded;
}
