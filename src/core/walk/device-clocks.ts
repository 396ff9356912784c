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

/** What is known about the clocks of the devices that wrote a log. */
export interface DeviceClocks {
  /** The comparisons, in the order of the log. */
  readonly readings: readonly ClockReading[];
  /**
   * Returns the offset to add to the time of an entry. It is zero when the device was never compared, or when its
   * clock is right to within half a second.
   */
  clockOffsetOf(entry: Entry): Duration;
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

/**
 * Works out the device clocks from the `clock.compared` entries, which may come in any order. A reading applies to
 * all entries of its device from its own place in the log order up to the next reading. The first reading of a device
 * also applies to everything the device entered earlier, because there is no better value for those entries.
 */
export function deviceClocks(entries: Iterable<Entry>): DeviceClocks {
  const readings = [...entries]
    .flatMap((entry) => readingOf(entry) ?? [])
    .sort((a, b) => compareEntries(a.entry, b.entry));
  const byDevice = new Map<string, ClockReading[]>();
  for (const reading of readings) {
    const own = byDevice.get(reading.device);
    if (own) own.push(reading);
    else byDevice.set(reading.device, [reading]);
  }
  return {
    readings,
    clockOffsetOf: (entry) => {
      const own = byDevice.size === 0 ? undefined : byDevice.get(deviceOf(entry.wire.source));
      if (!own) return NO_TIME;
      const reading = own.findLast((one) => compareEntries(one.entry, entry) <= 0) ?? own[0];
      return reading ? appliedOffset(reading) : NO_TIME;
    },
  };
}

/** Returns the entry with its time converted to the clock of the hub. */
export function corrected(entry: Entry, clocks: DeviceClocks): Entry {
  const clockOffset = clocks.clockOffsetOf(entry);
  return clockOffset === NO_TIME ? entry : { ...entry, at: later(entry.at, clockOffset) };
}
