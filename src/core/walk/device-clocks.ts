import type { ClockOffset, Entry } from "../log/index.ts";
import { appliedOffset, compareEntries, deviceOf } from "../log/index.ts";
import type { Duration, Instant } from "../units/index.ts";
import { later, NO_TIME, ofSeconds } from "../units/index.ts";

/** The clock of a device held against a hub's. */
export interface ClockReading extends ClockOffset {
  /** `/devices/…` */
  readonly device: string;
  readonly hub: string;
  /** When it was read, by the device's own clock. */
  readonly at: Instant;
  readonly entry: Entry;
}

/** What is known of the clocks of the devices that wrote a log. */
export interface DeviceClocks {
  /** In the order of the log. */
  readonly readings: readonly ClockReading[];
  /** The clock offset to add to the time of an entry: zero for a device that was never compared, or is right within half a second. */
  clockOffsetOf(entry: Entry): Duration;
}

/** The reading an entry is; `null` when it is none. */
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
 * The clocks of a log's devices, from its `clock.compared` entries in any order. A reading holds from its place in the
 * order on; the first of a device also for all that the device entered before it, when nobody could tell yet.
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

/** An entry with its time as the hub's clock would have had it. */
export function corrected(entry: Entry, clocks: DeviceClocks): Entry {
  const clockOffset = clocks.clockOffsetOf(entry);
  return clockOffset === NO_TIME ? entry : { ...entry, at: later(entry.at, clockOffset) };
}
