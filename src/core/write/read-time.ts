import type { Duration } from "../units/index.ts";
import { LONGEST_DURATION, parseDuration } from "../units/index.ts";

/** What a bare number in a column of times stands for. */
export type TimeUnit = "seconds" | "minutes" | "hours";

const LENGTHS = { seconds: 1000, minutes: 60_000, hours: 3_600_000 } as const;

const UNITS: readonly (readonly [RegExp, number])[] = [
  [/^(h|hr|hrs|hour|hours)$/, LENGTHS.hours],
  [/^(m|min|mins|minute|minutes|′|')$/, LENGTHS.minutes],
  [/^(s|sec|secs|second|seconds|″|")$/, LENGTHS.seconds],
];

/**
 * Reads a duration as planners write it in a table: a number in the unit of the column, `1:05` and `1:05:30` (hours first), numbers with units
 * (`1 h 5 min`, `90 s`), or ISO 8601. A comma may stand for the point. Rounded to the millisecond; `null` for anything else, and above
 * {@link LONGEST_DURATION}.
 */
export function readTime(written: string, unit: TimeUnit): Duration | null {
  const text = written.trim();
  if (text === "") return null;
  const iso = parseDuration(text.toUpperCase());
  if (iso !== null) return iso;
  const ms = clockIn(text) ?? numbersIn(text.toLowerCase(), unit);
  if (ms === null) return null;
  const whole = Math.round(ms);
  return whole <= LONGEST_DURATION ? (whole as Duration) : null;
}

function clockIn(text: string): number | null {
  const [, hours, minutes, seconds = "0"] = /^(\d{1,3}):([0-5]\d)(?::([0-5]\d))?$/.exec(text) ?? [];
  if (hours === undefined || minutes === undefined) return null;
  return (
    Number(hours) * LENGTHS.hours + Number(minutes) * LENGTHS.minutes + Number(seconds) * LENGTHS.seconds
  );
}

function numbersIn(text: string, unit: TimeUnit): number | null {
  const parts = [...text.matchAll(/(\d+(?:[.,]\d+)?)\s*([a-z′″'"]*)\.?\s*/g)];
  if (parts.length === 0 || parts.map(([all]) => all).join("") !== text) return null;
  let sum = 0;
  for (const [, number = "", named = ""] of parts) {
    // A bare number beside others tells no unit.
    const length = named === "" && parts.length === 1 ? LENGTHS[unit] : lengthOf(named);
    if (length === null) return null;
    sum += Number(number.replace(",", ".")) * length;
  }
  return sum;
}

const lengthOf = (named: string): number | null =>
  UNITS.find(([pattern]) => pattern.test(named))?.[1] ?? null;
