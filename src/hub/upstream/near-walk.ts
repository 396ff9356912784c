import { min } from "d3-array";
import type { Cursor, NearSide, RefusalReason, Settled } from "../../core/link/index.ts";
import { readCursor, writeCursor } from "../../core/link/index.ts";
import type { Entry } from "../../core/log/index.ts";
import { deviceOf, FARTHEST_AHEAD, keyOf, readEntry, wallOf } from "../../core/log/index.ts";
import type { Instant, WalkId } from "../../core/units/index.ts";
import { Listeners } from "../../core/units/index.ts";
import { inWords, message } from "../../words/index.ts";
import type { Engine } from "../engine/index.ts";
import type { Journal } from "../journal/index.ts";
import { type EarlyEntry, Outgoing, type OutgoingEntry } from "./outgoing.ts";

/** What this side of a walk's link is made of. */
export interface NearWalkParts {
  readonly engine: Engine;
  readonly walk: WalkId;
  /** Name of the other hub, as what comes from it is marked. */
  readonly far: string;
  /** Whether a device was admitted by this hub, so that the other one brings no entries of it. */
  readonly isOwn: (walk: WalkId, device: string) => boolean;
  readonly journal: Journal;
  /** The clock of this hub. */
  readonly now: () => Instant;
  /** Calls back after so many ms; returns a function that cancels the call. */
  readonly later: (ms: number, work: () => void) => () => void;
}

/** While an entry is early, the clock is looked at this often at least, in ms: somebody may set it, and timers cannot wait for much longer. */
const LONGEST_PAUSE = 3_600_000;
/** An entry that is ahead of the other hub's clock is offered again after so long at the earliest, in ms. */
const EARLY_PAUSE = 5_000;

/** This side of a link with another hub: the log of a walk as the engine keeps it. */
export class NearWalk implements NearSide {
  readonly #parts: NearWalkParts;
  readonly #cursorKey: string;
  readonly #outgoing: Outgoing;
  /** What is read belongs to the store as it was when reading began. */
  readonly #epoch: string;
  readonly #watchers = new Listeners();
  /** Offsets of what was offered last, by key, and in which round. */
  #offered = new Map<string, OutgoingEntry>();
  #round = 0;
  #forgetDue: () => void = () => {};

  private constructor(parts: NearWalkParts, outgoing: Outgoing) {
    this.#parts = parts;
    this.#cursorKey = `upstream.in ${parts.far} ${parts.walk}`;
    this.#outgoing = outgoing;
    this.#epoch = parts.engine.epoch;
  }

  static async open(parts: NearWalkParts): Promise<NearWalk> {
    return new NearWalk(parts, await Outgoing.open(parts.engine, parts.walk, parts.far));
  }

  /** How many entries the other hub refused, and what it said of the last one. */
  get refusals(): { readonly count: number; readonly words: string | null } {
    return { count: this.#outgoing.refused, words: this.#outgoing.words };
  }

  /** The other hub holds everything this hub had received by this time; `null` when it holds nothing. */
  async sentUpTo(): Promise<Instant | null> {
    const [first] = await this.#outgoing.waiting();
    const open = min([...(first ? [first] : []), ...this.#outgoing.early], ({ received }) => received);
    if (open === undefined) return this.#parts.now();
    return this.#outgoing.hasSent ? ((open - 1) as Instant) : null;
  }

  async outbox(limit: number): Promise<readonly Entry[]> {
    const now = this.#parts.now();
    const { round } = this.#outgoing;
    const due = this.#outgoing.early.filter((early) => early.due <= now);
    const waiting = await this.#outgoing.waiting();
    const chosen = [...due, ...waiting].slice(0, limit).sort((a, b) => a.offset - b.offset);
    const kept = await this.#outgoing.read(chosen.map(({ offset }) => offset));
    [this.#offered, this.#round] = [new Map(), round];
    const entries: Entry[] = [];
    const unreadable = new Map<number, string>();
    for (const { text, offset, received } of kept) {
      const { entry, problem } = readEntry(JSON.parse(text));
      if (!entry) {
        unreadable.set(offset, inWords(message("far/own-entry-unreadable", { why: problem })));
        continue;
      }
      this.#offered.set(keyOf(entry), { offset, received });
      entries.push(entry);
    }
    if (unreadable.size === 0) return entries;
    const [offsets, refusals] = [new Set(unreadable.keys()), [...unreadable.values()]];
    await this.#outgoing.settle({ round, offsets, early: [], refusals });
    return entries.length > 0 ? entries : this.outbox(limit);
  }

  async unsent(): Promise<number> {
    return (await this.#outgoing.waiting()).length + this.#outgoing.early.length;
  }

  async settle(settled: readonly Settled[]): Promise<void> {
    const now = this.#parts.now();
    const offsets = new Set<number>();
    const early: EarlyEntry[] = [];
    const refusals: string[] = [];
    for (const { entry, result } of settled) {
      const offered = this.#offered.get(keyOf(entry));
      if (!offered) continue;
      offsets.add(offered.offset);
      if (!("reason" in result)) continue;
      if (result.reason === "ahead") {
        const due = Math.max(now + EARLY_PAUSE, wallOf(entry.hlc) - FARTHEST_AHEAD) as Instant;
        early.push({ ...offered, due });
      } else refusals.push(result.words);
    }
    await this.#outgoing.settle({ round: this.#round, offsets, early, refusals });
    this.#awaitDue();
  }

  async cursor(): Promise<Cursor | null> {
    const { engine } = this.#parts;
    const [epoch, cursor = ""] = (await engine.keep.get(this.#cursorKey))?.split(" ") ?? [];
    // A store restored from a copy may have lost entries that it had sent, so reading starts again from the beginning.
    return epoch === this.#epoch ? readCursor(cursor) : null;
  }

  async takeIn(entries: readonly Entry[], cursor: Cursor): Promise<void> {
    const { engine, walk, far, isOwn } = this.#parts;
    const here = entries.filter((entry) => entry.walk === walk);
    const isOfOwn = ({ wire }: Entry) => isOwn(walk, deviceOf(wire.source));
    await this.#compareOwn(here.filter(isOfOwn));
    const mine = here.filter((entry) => !isOfOwn(entry));
    const outcomes = await engine.append(walk, mine, {
      via: far,
      alsoKeep: new Map([[this.#cursorKey, `${this.#epoch} ${writeCursor(cursor)}`]]),
    });
    for (const [index, outcome] of outcomes.entries()) {
      const entry = mine[index];
      // Also report an entry known under another stamp, since the two hubs then order their entries differently.
      const isHeldOtherwise = outcome.kind === "conflict" || (outcome.kind === "known" && outcome.hlc);
      if (!isHeldOtherwise || !entry) continue;
      await this.#setAside(entry, "conflict");
    }
    if (await this.#outgoing.meets(cursor.epoch)) this.#watchers.tell();
  }

  /** Entries of devices of this hub are taken from them alone: what is not here was forged over there, and is kept aside. */
  async #compareOwn(entries: readonly Entry[]): Promise<void> {
    const { engine, walk, far, journal } = this.#parts;
    const comparisons = entries.length > 0 ? await engine.compare(walk, entries) : [];
    let forged = 0;
    for (const [index, entry] of entries.entries()) {
      const comparison = comparisons[index] ?? null;
      if (comparison === null) {
        forged += 1;
        await this.#setAside(entry, "other-source");
      } else if (comparison.kind === "conflict" || comparison.hlc) await this.#setAside(entry, "conflict");
    }
    if (forged > 0)
      journal.note({ event: "refused", walk, device: far, reasons: { "other-source": forged } });
  }

  async #setAside(entry: Entry, reason: RefusalReason): Promise<void> {
    const { engine, walk, now } = this.#parts;
    await engine.keepRefused(walk, { text: JSON.stringify(entry.wire), reason, received: now() });
  }

  watch(onChange: () => void): () => void {
    const { engine, walk, far } = this.#parts;
    const unwatch = this.#watchers.add(onChange);
    const stop = engine.follow((changed, kept) => {
      if (changed === walk && kept.some(({ via }) => via !== far)) onChange();
    });
    this.#awaitDue();
    return () => {
      unwatch();
      stop();
      if (this.#watchers.size === 0) this.#forgetDue();
    };
  }

  /** Tells the watchers that the outbox has grown once the first early entry is due. */
  #awaitDue(): void {
    this.#forgetDue();
    const { early } = this.#outgoing;
    if (early.length === 0 || this.#watchers.size === 0) return;
    const first = min(early, ({ due }) => due) ?? 0;
    const left = Math.min(LONGEST_PAUSE, Math.max(0, first - this.#parts.now()));
    this.#forgetDue = this.#parts.later(left, () => {
      if (first > this.#parts.now()) this.#awaitDue();
      else this.#watchers.tell();
    });
  }
}
