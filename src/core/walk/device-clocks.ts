import type { ClockOffset, Entry } from "../log/index.ts";
import { appliedOffset, compareEntries, deviceOf } from "../log/index.ts";
import type { Duration, Instant } from "../units/index.ts";
import { later, NO_TIME, ofSeconds } from "../units/index.ts";

/** A comparison of a device clock with the clock of a hub. */
export interface ClockReading extends ClockOffset {
  /** The device part of an entry source, as in `/devices/…`. */
  readonly device: string;
  readonly hub: string;
  /** When the clocks were compared, by the device clock. */
  readonly at: Instant;
  readonly entry: Entry;
}

/** A jump of a device clock that was noticed by the device itself. */
export interface ClockJumpEntry {
  readonly device: string;
  /** How far the clock jumped ahead; below zero when it was set back. */
  readonly by: Duration;
  readonly entry: Entry;
}

/** What is known about the clocks of the devices that wrote a log. */
export interface DeviceClocks {
  /** The comparisons, in the order of the log. */
  readonly readings: readonly ClockReading[];
  /** The jumps, in the order of the log; one that several tabs of a device entered is listed once. */
  readonly jumps: readonly ClockJumpEntry[];
  /**
   * Returns the offset to add to the time of an entry. It is zero when nothing is known of the clock of its device, or
   * when the clock is right to within half a second.
   */
  clockOffsetOf(entry: Entry): Duration;
  /** Returns the offset to add to the clock of a device from the end of the log on. */
  latestOffsetOf(device: string): Duration;
}

/** Reads an entry as a clock comparison; returns `null` for any other entry. */
function readingOf(entry: Entry): ClockReading | null {
  const { fact } = entry.read;
  if (fact?.name !== "clock.compared") return null;
  return {
    device: deviceOf(entry.wire.source),
    hub: fact.hub,
    offset: ofSeconds(fact.offset),
    error: ofSeconds(fact.error),
    at: entry.at,
    entry,
  };
}

/** Reads an entry as a jump of a clock; returns `null` for any other entry. */
function jumpOf(entry: Entry): ClockJumpEntry | null {
  const { fact } = entry.read;
  if (fact?.name !== "clock.jumped") return null;
  return { device: deviceOf(entry.wire.source), by: ofSeconds(fact.by), entry };
}

/** Two tabs of a device that notice one jump enter it this close together, and agree on it this well, in ms. */
const SAME_JUMP = { apart: 5000, difference: 1000 } as const;

/** True when a jump is the one before it, noticed by another tab of the device. */
function isSameJump(before: ClockJumpEntry, jump: ClockJumpEntry): boolean {
  return (
    Math.abs(jump.entry.at - before.entry.at) < SAME_JUMP.apart &&
    Math.abs(jump.by - before.by) < SAME_JUMP.difference
  );
}

/** The comparisons and jumps of one device, each in the order of the log. */
interface OwnClock {
  readonly readings: ClockReading[];
  readonly jumps: ClockJumpEntry[];
}

const NO_CLOCK: OwnClock = { readings: [], jumps: [] };

/** True when `a` stands before `b` in the log, or is `b`; `null` stands behind every entry. */
const isBy = (a: Entry, b: Entry | null): boolean => b === null || compareEntries(a, b) <= 0;

/**
 * Works out the device clocks from the `clock.compared` and `clock.jumped` entries, which may come in any order and must
 * be without those that do not count. A comparison applies from its own place in the log order up to the next one, and
 * the first also to everything the device entered earlier, because there is no better value. A jump applies from its
 * own place on, and moves the comparisons before it along.
 */
export function deviceClocks(entries: Iterable<Entry>): DeviceClocks {
  const byDevice = new Map<string, OwnClock>();
  const own = (device: string): OwnClock => {
    const known = byDevice.get(device) ?? { readings: [], jumps: [] };
    byDevice.set(device, known);
    return known;
  };
  const readings: ClockReading[] = [];
  const jumps: ClockJumpEntry[] = [];
  for (const entry of [...entries].sort(compareEntries)) {
    const reading = readingOf(entry);
    if (reading) {
      readings.push(reading);
      own(reading.device).readings.push(reading);
    }
    const jump = jumpOf(entry);
    if (!jump) continue;
    const before = own(jump.device).jumps.at(-1);
    if (before && isSameJump(before, jump)) continue;
    jumps.push(jump);
    own(jump.device).jumps.push(jump);
  }
  const offsetAt = (clock: OwnClock, place: Entry | null): Duration => {
    const reading = clock.readings.findLast((one) => isBy(one.entry, place)) ?? clock.readings[0];
    const jumped = (until: Entry | null) =>
      clock.jumps.reduce((sum, { by, entry }) => (isBy(entry, until) ? sum + by : sum), 0);
    const since = (reading ? jumped(reading.entry) : 0) - jumped(place);
    return appliedOffset({ offset: ((reading?.offset ?? NO_TIME) + since) as Duration });
  };
  return {
    readings,
    jumps,
    clockOffsetOf: (entry) => {
      const clock = byDevice.size === 0 ? undefined : byDevice.get(deviceOf(entry.wire.source));
      return clock ? offsetAt(clock, entry) : NO_TIME;
    },
    latestOffsetOf: (device) => offsetAt(byDevice.get(device) ?? NO_CLOCK, null),
  };
}

/** Returns the entry with its time converted to the clock of the hub. */
export function corrected(entry: Entry, clocks: DeviceClocks): Entry {
  const clockOffset = clocks.clockOffsetOf(entry);
  return clockOffset === NO_TIME ? entry : { ...entry, at: later(entry.at, clockOffset) };
}
