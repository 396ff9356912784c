import type { Entry, FactData, FactName, HybridTime } from "../../src/core/log/index.ts";
import { laterOf, readEntry, stamp } from "../../src/core/log/index.ts";
import type { ProcedureFile } from "../../src/core/procedure/index.ts";
import type { Duration, Instant, WalkId } from "../../src/core/units/index.ts";
import { later } from "../../src/core/units/index.ts";
import { type Folded, foldLog, type Ledger, type StepProgress } from "../../src/core/walk/index.ts";
import { inWords } from "../../src/words/index.ts";

/** PET 0 of every walk that a {@link LogWriter} opens. */
export const ZERO = Date.UTC(2031, 3, 2, 9) as Instant;

/** The instant so many minutes of PET. */
export const minute = (minutes: number): Instant => later(ZERO, Math.round(minutes * 60_000) as Duration);

/** So many minutes. */
export const minutes = (count: number): Duration => Math.round(count * 60_000) as Duration;

/** Writes the log of a walk entry by entry, as one or several devices would. */
export class LogWriter {
  readonly entries: Entry[] = [];
  readonly #walk: WalkId;
  #seen: HybridTime | null = null;
  readonly #made = new Map<string, number>();

  constructor(walk = "walk-1") {
    this.#walk = walk as WalkId;
  }

  /** Opens the walk and starts its clock at PET 0. */
  static started(file: ProcedureFile, opening: Partial<FactData<"walk.opened">> = {}): LogWriter {
    return LogWriter.opened(file, opening).enter("clock.started", {}, 0);
  }

  /** Opens the walk without starting its clock. */
  static opened(file: ProcedureFile, opening: Partial<FactData<"walk.opened">> = {}): LogWriter {
    return new LogWriter().enter("walk.opened", { procedure: file, mode: "live", ...opening }, 0);
  }

  /** One more entry, of something that happened so many minutes of PET after the start. */
  enter<Name extends FactName>(
    name: Name,
    data: FactData<Name>,
    at: number,
    { source = "/devices/iv-tablet", actor = "iv" }: { source?: string; actor?: string } = {},
  ): this {
    const made = this.#made.get(source) ?? 0;
    const draft = { name, data, at: minute(at), actor } as Parameters<typeof stamp>[0];
    const entry = stamp(draft, this.#walk, { source, made, seen: this.#seen }, minute(at));
    this.#made.set(source, made + 1);
    this.#seen = laterOf(this.#seen, entry.hlc);
    this.entries.push(entry);
    return this;
  }

  /** The steps done, each at its minute. */
  done(...steps: readonly (readonly [step: string, at: number])[]): this {
    for (const [step, at] of steps) this.enter("step.done", { step }, at);
    return this;
  }

  /** Strikes the entry that was entered last but `back`. */
  strike(back: number, at: number): this {
    const target = this.entries.at(-1 - back);
    if (!target) throw new RangeError("no such entry");
    return this.enter("entry.struck", { source: target.wire.source, id: target.wire.id }, at);
  }

  get folded(): Folded {
    return foldLog(this.entries);
  }

  /** The ledger behind the last entry. */
  get ledger(): Ledger {
    const { ledger } = this.folded;
    if (!ledger) throw new Error("the walk was not opened");
    return ledger;
  }

  /** What was done otherwise than planned, in words. */
  get deviations(): readonly {
    readonly kind: string;
    readonly step: string | null;
    readonly text: string;
  }[] {
    return this.folded.deviations.map(({ kind, step, text }) => ({ kind, step, text: inWords(text) }));
  }

  /** Why entries had no effect, in order and in words. */
  get reasons(): readonly string[] {
    return this.folded.ignored.map(({ reason }) => inWords(reason));
  }
}

/** The same entry as another device would have read it: nothing shared with the original. */
export function copyOf({ wire }: Entry): Entry {
  return entryFrom(structuredClone(wire));
}

/** An entry from its JSON value, which must be one. */
export function entryFrom(value: unknown): Entry {
  const { entry, problem } = readEntry(value);
  if (!entry) throw new Error(`not an entry: ${problem.key}`);
  return entry;
}

/** How far each step of a ledger has come, in reading order. */
export function progressInOrder(ledger: Ledger | null | undefined): StepProgress[] {
  return [...(ledger?.steps ?? [])].map(([, progress]) => progress);
}
