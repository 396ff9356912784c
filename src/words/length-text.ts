import type { Duration, Rounding } from "../core/units/index.ts";
import { inWhole } from "../core/units/index.ts";

const two = (value: number) => String(value).padStart(2, "0");

/**
 * How long something takes, in words and without its sign, to what matters: `45 s`, `6 min`, `1 h 05 min`. A duration is
 * rounded up, what is left is rounded down ([OFF8]).
 */
export function lengthText(duration: Duration, rounding: Rounding = "up"): string {
  const length = Math.abs(duration) as Duration;
  const seconds = inWhole(1000, length, rounding);
  if (seconds < 100) return `${seconds} s`;
  const minutes = inWhole(60_000, length, rounding);
  return minutes < 60 ? `${minutes} min` : `${Math.floor(minutes / 60)} h ${two(minutes % 60)} min`;
}

/**
 * The same to the whole second up, for lengths that are compared with one another: `45 s`, `3 min 47 s`; from an hour on to the
 * minute.
 */
export function lengthToTheSecond(duration: Duration): string {
  const seconds = inWhole(1000, Math.abs(duration) as Duration, "up");
  if (seconds < 100 || seconds >= 3600) return lengthText(duration);
  const rest = seconds % 60;
  const minutes = `${Math.floor(seconds / 60)} min`;
  return rest === 0 ? minutes : `${minutes} ${two(rest)} s`;
}

/** How much is left until a limit: rounded down, and below zero, where it is missing, away from zero ([OFF8]). */
export function marginText(margin: Duration): string {
  return margin < 0 ? `−${lengthText(margin, "up")}` : lengthText(margin, "down");
}
