import type { Brand } from "./brand.ts";
import type { Duration } from "./duration.ts";

/** A moment in UTC, in whole milliseconds since 1970-01-01T00:00:00Z (leap seconds not counted). */
export type Instant = Brand<number, "Instant in ms since 1970">;

/** An RFC 3339 date-time. The seconds and an offset or `Z` are required. */
export const INSTANT_PATTERN =
  /^\d{4}-(?:0[1-9]|1[0-2])-(?:0[1-9]|[12]\d|3[01])[Tt](?:[01]\d|2[0-3]):[0-5]\d:(?:[0-5]\d|60)(?:\.\d+)?(?:[Zz]|[+-](?:[01]\d|2[0-3]):[0-5]\d)$/;

/**
 * 0000-01-01T00:00:00Z, the earliest instant that RFC 3339 can write in UTC; the latest is the end of the year 9999.
 */
const EARLIEST = -62_167_219_200_000;
const LATEST = 253_402_300_799_999;

const isWritable = (value: number) => value >= EARLIEST && value <= LATEST;

/**
 * Reads the decimal digits of `text` from `from` up to, not including, `to` (two to four digits). Returns a number
 * below zero when any of them is not a digit.
 */
function digits(text: string, from: number, to: number): number {
  let value = 0;
  for (let at = from; at < to; at += 1) {
    const digit = text.charCodeAt(at) - 48;
    if (digit < 0 || digit > 9) return -1;
    value = value * 10 + digit;
  }
  return value;
}

/**
 * A fast path for the exact form that {@link formatInstant} writes, limited to days 1 to 28, which every month has.
 * Returns `null` for any other text, which may still be a valid instant. Nearly every time in a log has this form, and
 * a log has ten thousand of them.
 */
function plainInstant(text: string): Instant | null {
  const isPlain =
    text.length === 24 &&
    text[4] === "-" &&
    text[7] === "-" &&
    text[10] === "T" &&
    text[13] === ":" &&
    text[16] === ":" &&
    text[19] === "." &&
    text[23] === "Z";
  if (!isPlain) return null;
  const year = digits(text, 0, 4);
  const month = digits(text, 5, 7);
  const day = digits(text, 8, 10);
  const hour = digits(text, 11, 13);
  const minute = digits(text, 14, 16);
  const second = digits(text, 17, 19);
  const milliseconds = digits(text, 20, 23);
  const isDate = year >= 1000 && month >= 1 && month <= 12 && day >= 1 && day <= 28;
  const isTime = hour >= 0 && hour < 24 && minute >= 0 && minute < 60 && second >= 0 && second < 60;
  if (!isDate || !isTime || milliseconds < 0) return null;
  return Date.UTC(year, month - 1, day, hour, minute, second, milliseconds) as Instant;
}

/**
 * Reads an RFC 3339 date-time, cut to the millisecond. Returns `null` when the text is not one, or names a day or
 * second that does not exist.
 */
export function parseInstant(text: string): Instant | null {
  const plain = plainInstant(text);
  if (plain !== null) return plain;
  if (!INSTANT_PATTERN.test(text)) return null;
  const value = Date.parse(text.toUpperCase());
  if (!isWritable(value)) return null;
  // Date.parse turns 31 February into a day in March, so a day that does not exist is refused here.
  const day = Number(text.slice(8, 10));
  const lastDay = new Date(Date.UTC(Number(text.slice(0, 4)), Number(text.slice(5, 7)), 0)).getUTCDate();
  return day <= lastDay ? (value as Instant) : null;
}

/** The instant as RFC 3339 text in UTC with milliseconds: `2031-04-02T09:12:31.500Z`. */
export function formatInstant(instant: Instant): string {
  if (!isWritable(instant)) throw new RangeError(`not an instant that RFC 3339 can write: ${instant}`);
  return new Date(instant).toISOString();
}

/** The day of the year in UTC, from 1 on 1 January to 365, or 366 in a leap year, on 31 December. */
export function dayOfYear(instant: Instant): number {
  const date = new Date(instant);
  const day = date.setUTCHours(0, 0, 0, 0);
  return (day - date.setUTCMonth(0, 1)) / 86_400_000 + 1;
}

/** The instant that is `by` later than `instant`. */
export function later(instant: Instant, by: Duration): Instant {
  return (instant + by) as Instant;
}

/** The time from `from` to `to`, below zero when `to` is earlier. */
export function between(from: Instant, to: Instant): Duration {
  return (to - from) as Duration;
}
