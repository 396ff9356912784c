import { parse } from "tinyduration";
import type { Brand } from "./brand.ts";

/** A span of time, or a PET (time since the walk's clock was started), in whole milliseconds. */
export type Duration = Brand<number, "Duration in ms">;

/** A length in metres. */
export type Metres = Brand<number, "Length in m">;

/**
 * The ISO 8601-1:2019 durations that are accepted: days down to seconds, with decimals in the seconds only. Years,
 * months and weeks are left out because their length depends on the calendar.
 */
export const DURATION_PATTERN = /^P(?=\d|T)(?:\d+D)?(?:T(?=\d)(?:\d+H)?(?:\d+M)?(?:\d+(?:[.,]\d+)?S)?)?$/;

const SECOND = 1000;
const MINUTE = 60 * SECOND;
const HOUR = 60 * MINUTE;
const DAY = 24 * HOUR;

/** The longest duration that is accepted; anything above it is taken to be a typing mistake. */
export const LONGEST_DURATION = (366 * DAY) as Duration;

/** A duration of zero. */
export const NO_TIME = 0 as Duration;

/**
 * Reads an ISO 8601 duration such as `PT1H5M` or `PT90S`, rounded to the millisecond. Returns `null` when the text does
 * not match {@link DURATION_PATTERN} or the duration is longer than {@link LONGEST_DURATION}.
 */
export function parseDuration(text: string): Duration | null {
  if (!DURATION_PATTERN.test(text)) return null;
  const parts = parse(text);
  const total = Math.round(
    (parts.days ?? 0) * DAY +
      (parts.hours ?? 0) * HOUR +
      (parts.minutes ?? 0) * MINUTE +
      (parts.seconds ?? 0) * SECOND,
  );
  return total <= LONGEST_DURATION ? (total as Duration) : null;
}

/** The ISO 8601 text of a duration of zero or more, with hours as the largest unit: `PT1H5M`, `PT0.5S`, `PT0S`. */
export function formatDuration(duration: Duration): string {
  const hours = Math.floor(duration / HOUR);
  const minutes = Math.floor((duration % HOUR) / MINUTE);
  const seconds = (duration % MINUTE) / SECOND;
  const text = `${hours ? `${hours}H` : ""}${minutes ? `${minutes}M` : ""}${seconds ? `${seconds}S` : ""}`;
  return `PT${text || "0S"}`;
}

/** Converts seconds to a duration, rounded to the millisecond. */
export function ofSeconds(seconds: number): Duration {
  return Math.round(seconds * SECOND) as Duration;
}

/** A duration in seconds, exact to the millisecond. */
export function inSeconds(duration: number): number {
  return duration / SECOND;
}

/** A duration in minutes, exact to the millisecond. */
export function inMinutes(duration: number): number {
  return duration / MINUTE;
}

/** `a + b`. */
export function plus(a: Duration, b: Duration): Duration {
  return (a + b) as Duration;
}

/** `a − b`, below zero when `b` is the longer. */
export function minus(a: Duration, b: Duration): Duration {
  return (a - b) as Duration;
}

/** The longest of the given durations, or zero when there are none. */
export function longest(...durations: readonly Duration[]): Duration {
  return durations.reduce((most, next) => (next > most ? next : most), NO_TIME);
}
