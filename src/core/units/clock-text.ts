import type { Duration } from "./duration.ts";

const two = (value: number) => String(value).padStart(2, "0");

/** A PET or countdown as people read it on a clock, such as `2:14:07`; cut to the second, `-0:00:05` below zero. */
export function clockText(duration: Duration): string {
  const sign = duration < 0 ? "-" : "";
  const seconds = Math.floor(Math.abs(duration) / 1000);
  return `${sign}${Math.floor(seconds / 3600)}:${two(Math.floor(seconds / 60) % 60)}:${two(seconds % 60)}`;
}

/** A PET or countdown to the minute, as timelines print it, such as `2:14`; rounded down. */
export function hourMinuteText(duration: Duration): string {
  const sign = duration < 0 ? "-" : "";
  const minutes = Math.floor(Math.abs(duration) / 60_000);
  return `${sign}${Math.floor(minutes / 60)}:${two(minutes % 60)}`;
}
