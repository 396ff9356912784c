import type { Duration } from "./duration.ts";

/**
 * Where a time goes that falls between two of those that are shown ([OFF8]): a margin, a limit and a start down, a finish
 * and a duration up. Down is towards the earlier, so that −5.5 becomes −6.
 */
export type Rounding = "down" | "up";

/** A time in whole units of so many milliseconds. */
export function inWhole(unit: number, duration: Duration, rounding: Rounding): number {
  return rounding === "up" ? Math.ceil(duration / unit) : Math.floor(duration / unit);
}

const two = (value: number) => String(value).padStart(2, "0");

/** A PET or countdown as people read it on a clock, such as `2:14:07`, to the second; `-0:00:05` below zero. */
export function clockText(duration: Duration, rounding: Rounding = "down"): string {
  const whole = inWhole(1000, duration, rounding);
  const seconds = Math.abs(whole);
  const sign = whole < 0 ? "-" : "";
  return `${sign}${Math.floor(seconds / 3600)}:${two(Math.floor(seconds / 60) % 60)}:${two(seconds % 60)}`;
}

/** A PET or countdown to the minute, as timelines print it, such as `2:14`. */
export function hourMinuteText(duration: Duration, rounding: Rounding = "down"): string {
  const whole = inWhole(60_000, duration, rounding);
  const minutes = Math.abs(whole);
  return `${whole < 0 ? "-" : ""}${Math.floor(minutes / 60)}:${two(minutes % 60)}`;
}
