import { fc } from "@fast-check/vitest";
import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import type { Entry, FactName } from "../../../src/core/log/index.ts";
import { typeOf } from "../../../src/core/log/index.ts";
import type { Instant } from "../../../src/core/units/index.ts";
import { formatInstant } from "../../../src/core/units/index.ts";
import { copyOf, entryFrom, ZERO } from "../log-writer.ts";
import type { Tap } from "./taps.ts";
import { FILE, GOING_WELL, tap } from "./taps.ts";

/** How the clock of a device is wrong, in milliseconds: by `skew` in all it writes, by `wrong` in the times it gives only. */
interface DeviceClock {
  readonly skew: number;
  readonly wrong: number;
}

/** Five sources of four devices. */
const SOURCES = ["/devices/0", "/devices/1", "/devices/2", "/devices/3", "/devices/3/second"];

const DAY = 86_400_000;

/** The hybrid time of an instant. */
const hybridTime = (instant: number, counter = "0000") => `${String(instant).padStart(15, "0")}-${counter}`;

/** Writes down what happens on the devices, one entry after another. */
class TapWriter {
  readonly wires: Record<string, unknown>[] = [];
  readonly #clocks: readonly DeviceClock[];
  readonly #made = new Map<string, number>();

  constructor(clocks: readonly DeviceClock[]) {
    this.#clocks = clocks;
  }

  /** Name of the next entry of a source but `ahead`. */
  nameOf(device: number, ahead = 0): { source: string; id: string } {
    const source = SOURCES[device] ?? "";
    return { source, id: String((this.#made.get(source) ?? 0) + 1 + ahead).padStart(10, "0") };
  }

  write(device: number, now: number, [name, data]: readonly [name: string, data: object], more: object = {}) {
    const { source, id } = this.nameOf(device);
    this.#made.set(source, Number(id));
    const { skew = 0, wrong = 0 } = this.#clocks[device] ?? {};
    const isLooked = "offset" in data && data.offset === null;
    this.wires.push({
      specversion: "1.0",
      id,
      source,
      type: typeOf(name as FactName),
      subject: "walk-1",
      time: formatInstant((now + skew + wrong) as Instant),
      sequence: id,
      hlc: hybridTime(now + skew),
      actor: "iv",
      data: isLooked ? { ...data, offset: -(skew + wrong) / 1000 } : data,
      ...more,
    });
  }

  /** Another entry under the name of one that was written. */
  clash({ clashes, late }: Tap, now: number): void {
    const clashing = this.wires.at(clashes === "opening" ? 0 : -1);
    if (!clashes || !clashing) return;
    const hlc = hybridTime(now, "0001");
    if (clashes === "stamp") this.wires.push({ ...clashing, hlc, hlcmade: clashing["hlc"] });
    else {
      const other = late > 0 ? { hlc } : { time: formatInstant((now + 1000) as Instant) };
      this.wires.push({ ...clashing, actor: "ev2", ...other });
    }
  }
}

/** What some people tapped on up to five devices, not always linked, whose clocks are wrong. */
export interface TappedLog {
  readonly taps: readonly Tap[];
  /** By device. */
  readonly clocks: readonly DeviceClock[];
  /** Notes made behind every tap, to make the log long. */
  readonly notes: number;
}

/** The entries of a log, in the order in which they were tapped. */
export function entriesOf({ taps, clocks, notes }: TappedLog): Entry[] {
  let now: number = ZERO;
  const well = [...GOING_WELL];
  const writer = new TapWriter(clocks);
  writer.write(0, now, ["walk.opened", { procedure: FILE, mode: "live" }]);
  writer.write(0, now, ["clock.started", {}]);
  for (const one of taps) {
    const { device, pause, late, what, strikes, astray } = one;
    now += pause;
    if (strikes === null) {
      const time = formatInstant(
        (now + (clocks[device]?.skew ?? 0) + (clocks[device]?.wrong ?? 0) - late) as Instant,
      );
      const tapped = what ?? well.shift() ?? (["note.made", { text: "Well." }] as const);
      writer.write(device, now, tapped, { time, ...(astray ? { subject: "walk-2" } : {}) });
    } else {
      const target = writer.wires[writer.wires.length - 1 - strikes];
      const { source, id } = target ? target : writer.nameOf(device, 1);
      writer.write(device, now, ["entry.struck", { source, id }]);
    }
    writer.clash(one, now);
    for (let note = 0; note < notes; note += 1) {
      writer.write((device + note) % SOURCES.length, now + note, ["note.made", { text: `Note ${note}.` }]);
    }
  }
  return writer.wires.map(entryFrom);
}

const clock: fc.Arbitrary<DeviceClock> = fc.record({
  skew: fc.oneof(
    { weight: 4, arbitrary: fc.constant(0) },
    { weight: 2, arbitrary: fc.integer({ min: -200_000, max: 200_000 }) },
    { weight: 1, arbitrary: fc.integer({ min: -3 * DAY, max: 3 * DAY }) },
  ),
  wrong: fc.oneof(
    { weight: 4, arbitrary: fc.constant(0) },
    { weight: 1, arbitrary: fc.integer({ min: -3_600_000, max: 3_600_000 }) },
    { weight: 1, arbitrary: fc.integer({ min: -3 * DAY, max: 3 * DAY }) },
  ),
});

const clocks = fc.array(clock, { minLength: 5, maxLength: 5 });

/** Logs of up to about 60 entries. */
export const tappedLog: fc.Arbitrary<TappedLog> = fc.record({
  taps: fc.array(tap, { minLength: 1, maxLength: 45, size: "max" }),
  clocks,
  notes: fc.constant(0),
});

/** Logs of more than 400 entries, in which the taps stand far apart. */
export const longTappedLog: fc.Arbitrary<TappedLog> = fc.record({
  taps: fc.array(tap, { minLength: 25, maxLength: 45, size: "max" }),
  clocks,
  notes: fc.integer({ min: 16, max: 24 }),
});

/** What everything that is left to chance is made of. */
export const seed: fc.Arbitrary<number> = fc.nat();

/** Gives numbers from 0 up to 1, the same for the same seed. */
export function chanceOf(number: number): () => number {
  const generator = xoroshiro128plus(number);
  return () => uniformFloat64(generator);
}

/**
 * The entries as they come in somewhere, in batches: some twice, as the same object or as a fresh one, and `astray` of them
 * (0 to 1) not in their turn but anywhere.
 */
export function arrivalsOf(entries: readonly Entry[], chance: () => number, astray: number): Entry[][] {
  const arriving = entries
    .flatMap((entry) => (chance() < 0.3 ? [entry, chance() < 0.5 ? copyOf(entry) : entry] : [entry]))
    .map((entry, turn) => ({ entry, turn: chance() < astray ? chance() * entries.length * 1.3 : turn }))
    .sort((a, b) => a.turn - b.turn);
  const batches: Entry[][] = [];
  for (let from = 0; from < arriving.length; from += batches.at(-1)?.length ?? 1) {
    const size = 1 + Math.floor(chance() * 6);
    batches.push(arriving.slice(from, from + size).map(({ entry }) => entry));
  }
  return batches;
}
