import type { Brand } from "./brand.ts";
import type { Duration } from "./duration.ts";

/** A moment in UTC, in whole milliseconds since 1970-01-01T00:00:00Z (leap seconds not counted). */
export type Instant = Brand<number, "Instant in ms since 1970">;

/** An RFC 3339 date-time: seconds required, an offset or `Z` required. */
export const INSTANT_PATTERN =
  /^\d{4}-(?:0[1-9]|1[0-2])-(?:0[1-9]|[12]\d|3[01])[Tt](?:[01]\d|2[0-3]):[0-5]\d:(?:[0-5]\d|60)(?:\.\d+)?(?:[Zz]|[+-](?:[01]\d|2[0-3]):[0-5]\d)$/;

/** 0000-01-01T00:00:00Z and the end of 9999: what RFC 3339 can write in UTC. */
const EARLIEST = -62_167_219_200_000;
const LATEST = 253_402_300_799_999;

const isWritable = (value: number) => value >= EARLIEST && value <= LATEST;

/** Reads an RFC 3339 date-time, cut to the millisecond. `null` when it is none, or names a day or second that does not exist. */
export function parseInstant(text: string): Instant | null {
  if (!INSTANT_PATTERN.test(text)) return null;
  const value = Date.parse(/[tz]/.test(text) ? text.toUpperCase() : text);
  if (!isWritable(value)) return null;
  // Date.parse rolls 31 February over into March; such a day is refused. Every month has 28 days.
  const day = Number(text.slice(8, 10));
  if (day <= 28) return value as Instant;
  const lastDay = new Date(Date.UTC(Number(text.slice(0, 4)), Number(text.slice(5, 7)), 0)).getUTCDate();
  return day <= lastDay ? (value as Instant) : null;
}

/** RFC 3339 in UTC with milliseconds: `2031-04-02T09:12:31.500Z`. */
export function formatInstant(instant: Instant): string {
  if (!isWritable(instant)) throw new RangeError(`not an instant that RFC 3339 can write: ${instant}`);
  return new Date(instant).toISOString();
}

/** The instant so much later than `instant`. */
export function later(instant: Instant, by: Duration): Instant {
  return (instant + by) as Instant;
}

/** The time from `from` to `to`, below zero when `to` is the earlier. */
export function between(from: Instant, to: Instant): Duration {
  return (to - from) as Duration;
}
