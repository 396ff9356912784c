import { bisector } from "d3-array";
import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { Entry } from "../log/index.ts";
import { compareEntries, isOfHubs, keyOf, likenessOf, mergeEntries } from "../log/index.ts";
import type { Duration, Instant, WalkId } from "../units/index.ts";
import { applyEntry } from "./apply-entry.ts";
import type { Deviation } from "./deviation.ts";
import type { ClockJumpEntry, ClockReading, DeviceClocks } from "./device-clocks.ts";
import { corrected, deviceClocks } from "./device-clocks.ts";
import type { IgnoredEntry, Ledger } from "./ledger.ts";
import { LedgerTrail } from "./ledger-trail.ts";
import type { Strikes } from "./strikes.ts";
import { strikesOf, strikeText } from "./strikes.ts";

/** The result of folding a log. It depends only on the set of entries ([LOG3]). */
export interface Folded {
  /** `null` until the walk was opened. */
  readonly ledger: Ledger | null;
  /** Entries that had no effect, in the order of the log, followed by entries that conflict under one key. */
  readonly ignored: readonly IgnoredEntry[];
  /** Deviations in the order of the log, followed by one for each struck entry. */
  readonly deviations: readonly Deviation[];
  /** All entries in order, struck ones included. */
  readonly entries: readonly Entry[];
  /** Key of each struck entry → the strike. */
  readonly struck: ReadonlyMap<string, Entry>;
  /** The latest time at which something happened, by any entry but those of hubs; `null` without one. */
  readonly lastAt: Instant | null;
  /** The comparisons of device clocks with the clock of a hub, in the order of the log. */
  readonly clocks: readonly ClockReading[];
  /** The jumps of device clocks that the devices noticed themselves, in the order of the log. */
  readonly jumps: readonly ClockJumpEntry[];
  /** Returns the time of an entry, converted to the clock of the hub where the offset is known. */
  timeOf(entry: Entry): Instant;
  /** Returns the offset to add to the clock of a device now, as far as the log tells. */
  clockOffsetOf(device: string): Duration;
}

/** Options for how a log is folded. */
export interface FoldOptions {
  /** True to use the times as the devices wrote them, without correcting for their clocks. */
  readonly asEntered?: boolean;
}

/** An entry that had no effect, by its position in the log order. */
interface IgnoredAt {
  readonly position: number;
  readonly reason: Message;
}

/** True for a comparison of clocks and for a jump of one. */
const isOnClocks = ({ read: { fact } }: Entry): boolean =>
  fact?.name === "clock.compared" || fact?.name === "clock.jumped";

/** True for what a hub writes of itself, as far as it can be read: nothing of it happened in the walk. */
const isUnderstoodOfHubs = ({ read, wire }: Entry): boolean => read.fact !== null && isOfHubs(wire.type);

const inOrder = bisector(compareEntries);

const NO_CLOCKS: DeviceClocks = deviceClocks([]);

const NO_STRIKES: Strikes = { struck: new Map(), idle: new Map(), targets: new Set() };

/**
 * Folds a log incrementally. An entry at the end of the log costs one step. A late entry or a strike resumes the fold
 * from the last kept ledger before the changed position.
 */
export class WalkFold {
  #entries: Entry[] = [];
  readonly #trail = new LedgerTrail();
  /** For each position, the latest time of that entry and all entries before it. */
  readonly #latest: (Instant | null)[] = [];
  #ignoredAt: IgnoredAt[] = [];
  #conflicting: readonly Entry[] = [];
  readonly #byKey = new Map<string, Entry>();
  #strikes: Strikes = NO_STRIKES;
  #strikeEntries: Entry[] = [];
  #clockEntries: Entry[] = [];
  #clocks: DeviceClocks = NO_CLOCKS;
  /** The walk that the log is of; `null` until one was opened. */
  #walk: WalkId | null = null;
  /** True when a comparison or jump was struck, or is no longer, since the clocks were worked out. */
  #areClocksStale = false;
  readonly #asEntered: boolean;

  constructor({ asEntered = false }: FoldOptions = {}) {
    this.#asEntered = asEntered;
  }

  /**
   * Adds entries, in any order. Entries that are already known change nothing. Returns how many entries were folded.
   */
  add(incoming: Iterable<Entry>): number {
    const fresh: Entry[] = [];
    const doubled: Entry[] = [];
    for (const entry of incoming) {
      const key = keyOf(entry);
      const known = this.#byKey.get(key);
      if (!known) {
        this.#byKey.set(key, entry);
        fresh.push(entry);
      } else if (likenessOf(known, entry) !== "identical") doubled.push(entry);
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
    return this.#foldAsOpened(Math.min(from, this.#takeStrikes(fresh), this.#takeClocks(fresh)));
  }

  /**
   * Folds again from a position. When that tells which walk the log is of, strikes and entries about clocks under another
   * walk's id stop to count, and if there are any, the whole is folded once more. Returns how many entries were folded.
   */
  #foldAsOpened(from: number): number {
    const folded = this.#foldFrom(from);
    const walk = this.#trail.last?.opened.walk ?? null;
    if (walk === this.#walk) return folded;
    this.#walk = walk;
    if (this.#entries.every((entry) => entry.walk === walk)) return folded;
    this.#strikes = this.#strikesNow();
    this.#clocks = this.#clocksNow();
    return this.#foldFrom(0);
  }

  /** True for an entry of the walk that was opened, and for every entry until one was. */
  #isOwn(entry: Entry): boolean {
    return this.#walk === null || entry.walk === this.#walk;
  }

  #strikesNow(): Strikes {
    return strikesOf(
      this.#strikeEntries,
      (key) => this.#byKey.get(key),
      (entry) => this.#isOwn(entry),
    );
  }

  #clocksNow(): DeviceClocks {
    const { struck } = this.#strikes;
    return deviceClocks(
      this.#clockEntries.filter((entry) => this.#isOwn(entry) && !struck.has(keyOf(entry))),
    );
  }

  /** The result for the entries added so far. */
  get folded(): Folded {
    const ledger = this.#trail.last;
    const timeOf = (entry: Entry) => this.#inTime(entry).at;
    return {
      ledger,
      ignored: this.#ignored(),
      deviations: this.#deviations(ledger),
      entries: this.#entries,
      struck: this.#strikes.struck,
      lastAt: this.#latest.at(-1) ?? null,
      clocks: this.#clocks.readings,
      jumps: this.#clocks.jumps,
      timeOf,
      clockOffsetOf: (device) => this.#clocks.latestOffsetOf(device),
    };
  }

  /** Returns the entry with the time that counts: corrected for the device clock, unless `asEntered` is set. */
  #inTime(entry: Entry): Entry {
    return this.#asEntered ? entry : corrected(entry, this.#clocks);
  }

  /**
   * Folds the whole set again. This is only needed when different entries have the same key: merging the whole set
   * makes the result independent of the order of arrival.
   */
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
    this.#clockEntries = [];
    // A strike of before may have lost its key to an entry that is none.
    this.#strikes = NO_STRIKES;
    this.#clocks = NO_CLOCKS;
    this.#takeStrikes(ordered);
    this.#takeClocks(ordered);
    return this.#foldAsOpened(0);
  }

  /** Returns the index of the first entry that is equal to or after `entry` in the log order. */
  #positionOf(entry: Entry): number {
    return inOrder.left(this.#entries, entry);
  }

  /**
   * Works out the struck entries again when a strike arrives, or an entry that an earlier strike names. Returns the
   * first position that changes, or infinity when none does.
   */
  #takeStrikes(fresh: readonly Entry[]): number {
    const strikes = fresh.filter(({ read }) => read.fact?.name === "entry.struck");
    const isWaitedFor = (entry: Entry) => this.#strikes.targets.has(keyOf(entry));
    if (strikes.length === 0 && !fresh.some(isWaitedFor)) return Number.POSITIVE_INFINITY;
    this.#strikeEntries = [...this.#strikeEntries, ...strikes].sort(compareEntries);
    const before = this.#strikes.struck;
    this.#strikes = this.#strikesNow();
    const after = this.#strikes.struck;
    let from = Number.POSITIVE_INFINITY;
    for (const key of new Set([...before.keys(), ...after.keys()])) {
      if (before.has(key) === after.has(key)) continue;
      const target = this.#byKey.get(key);
      if (!target) continue;
      from = Math.min(from, this.#positionOf(target));
      if (isOnClocks(target)) this.#areClocksStale = true;
    }
    return from;
  }

  /**
   * Adds comparisons and jumps of clocks, and leaves out those that are struck. They can change the times of all entries
   * of a device. Returns the first position that changes, or infinity when none does. Strikes must be up to date.
   */
  #takeClocks(fresh: readonly Entry[]): number {
    const more = fresh.filter(isOnClocks);
    if (more.length === 0 && !this.#areClocksStale) return Number.POSITIVE_INFINITY;
    this.#clockEntries.push(...more);
    this.#areClocksStale = false;
    const before = this.#clocks;
    this.#clocks = this.#clocksNow();
    if (this.#asEntered) return Number.POSITIVE_INFINITY;
    const moved = this.#entries.findIndex(
      (entry) => before.clockOffsetOf(entry) !== this.#clocks.clockOffsetOf(entry),
    );
    return moved === -1 ? Number.POSITIVE_INFINITY : moved;
  }

  /** Folds again from a position to the end; returns how many entries were folded. */
  #foldFrom(from: number): number {
    const kept = this.#trail.goBackTo(Math.min(from, this.#latest.length));
    const isKnown = Math.min(from, this.#latest.length);
    this.#latest.length = isKnown;
    const known = this.#ignoredAt.findIndex(({ position }) => position >= isKnown);
    if (known >= 0) this.#ignoredAt.length = known;
    let { ledger } = kept;
    for (let position = kept.length; position < this.#entries.length; position += 1) {
      const entry = this.#entries[position];
      if (!entry) break;
      const inTime = this.#inTime(entry);
      const result = this.#isLeftOut(entry) ? null : applyEntry(ledger, inTime);
      ledger = result?.ledger ?? ledger;
      this.#trail.push(ledger);
      if (position < isKnown) continue;
      const latest = this.#latest.at(-1) ?? null;
      const isLater = !isUnderstoodOfHubs(entry) && (latest === null || inTime.at > latest);
      this.#latest.push(isLater ? inTime.at : latest);
      if (result && result.ignored !== null) this.#ignoredAt.push({ position, reason: result.ignored });
    }
    return this.#entries.length - kept.length;
  }

  /**
   * Returns true for struck entries and for strikes, which the fold skips because strikes are processed beforehand, and for
   * what hubs write of themselves. The reasons for strikes without effect are collected when they are asked for.
   */
  #isLeftOut(entry: Entry): boolean {
    if (entry.read.fact?.name === "entry.struck" || isUnderstoodOfHubs(entry)) return true;
    return this.#strikes.struck.size > 0 && this.#strikes.struck.has(keyOf(entry));
  }

  #ignored(): IgnoredEntry[] {
    const { idle, struck } = this.#strikes;
    const idleAt = [...idle].flatMap(([key, reason]): IgnoredAt[] => {
      const entry = struck.has(key) ? undefined : this.#byKey.get(key);
      return entry ? [{ position: this.#positionOf(entry), reason }] : [];
    });
    const ordered = [...this.#ignoredAt, ...idleAt].sort((a, b) => a.position - b.position);
    const conflicting = message("walk/same-key");
    return [
      ...ordered.flatMap(({ position, reason }) => {
        const wire = this.#entries[position]?.wire;
        return wire ? [{ source: wire.source, id: wire.id, reason }] : [];
      }),
      ...this.#conflicting.map(({ wire }) => ({ source: wire.source, id: wire.id, reason: conflicting })),
    ];
  }

  #deviations(ledger: Ledger | null): Deviation[] {
    const struck = [...this.#strikes.struck].map(([key, strike]): Deviation => {
      const target = this.#byKey.get(key);
      const fact = target?.read.fact;
      const step = fact && "step" in fact ? (fact.step ?? null) : null;
      return {
        kind: "struck",
        step,
        record: null,
        text: strikeText(fact?.name ?? null, strike),
        at: this.#inTime(strike).at,
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
