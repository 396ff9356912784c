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

/** How much is left until a limit: rounded down, and below zero, where it is missing, away from zero ([OFF8]). */
export function marginText(margin: Duration): string {
  return margin < 0 ? `−${lengthText(margin, "up")}` : lengthText(margin, "down");
}
