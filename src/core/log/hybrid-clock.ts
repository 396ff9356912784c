import type { Brand, Instant } from "../units/index.ts";

/**
 * A reading of a hybrid logical clock (Kulkarni, Demirbas, Madappa, Avva & Leone, "Logical Physical Clocks", OPODIS 2014):
 * 15 digits of milliseconds since 1970, a hyphen, 4 hexadecimal digits of counter. Sorts as text.
 */
export type HybridTime = Brand<string, "HybridTime">;

/** What a hybrid time looks like. */
export const HYBRID_TIME_PATTERN = /^\d{15}-[0-9a-fA-F]{4}$/;

const FULLEST_COUNTER = 0xffff;

interface Parts {
  readonly wall: number;
  readonly counter: number;
}

const partsOf = (time: HybridTime): Parts => ({
  wall: Number(time.slice(0, 15)),
  counter: Number.parseInt(time.slice(16), 16),
});

function write({ wall, counter }: Parts): HybridTime {
  // A full counter borrows the next millisecond, so that the reading still grows.
  const full = counter > FULLEST_COUNTER;
  const digits = String(full ? wall + 1 : wall).padStart(15, "0");
  return `${digits}-${(full ? 0 : counter).toString(16).padStart(4, "0")}` as HybridTime;
}

/** The milliseconds part of a reading. */
export function wallOf(time: HybridTime): Instant {
  return partsOf(time).wall as Instant;
}

/** The reading for an entry made here at `now`, after everything up to `last` was seen (the paper's rule for send or local event). */
export function tick(last: HybridTime | null, now: Instant): HybridTime {
  const wall = Math.max(0, now);
  if (last === null) return write({ wall, counter: 0 });
  const seen = partsOf(last);
  return write(seen.wall >= wall ? { wall: seen.wall, counter: seen.counter + 1 } : { wall, counter: 0 });
}

/** The reading here after an entry stamped `remote` has come in at `now` (the paper's rule for receive). */
export function receive(last: HybridTime | null, remote: HybridTime, now: Instant): HybridTime {
  const own = last === null ? { wall: 0, counter: 0 } : partsOf(last);
  const other = partsOf(remote);
  const wall = Math.max(own.wall, other.wall, now);
  if (wall === own.wall && wall === other.wall)
    return write({ wall, counter: Math.max(own.counter, other.counter) + 1 });
  if (wall === own.wall) return write({ wall, counter: own.counter + 1 });
  if (wall === other.wall) return write({ wall, counter: other.counter + 1 });
  return write({ wall, counter: 0 });
}

/** The later of two readings; `null` stands for none and is earlier than every reading. */
export function laterOf(a: HybridTime | null, b: HybridTime | null): HybridTime | null {
  if (a === null) return b;
  return b === null || a > b ? a : b;
}
