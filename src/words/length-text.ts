import type { Duration } from "../core/units/index.ts";

const two = (value: number) => String(value).padStart(2, "0");

/** How long something takes in words, rounded to what matters: `45 s`, `6 min`, `1 h 05 min`. */
export function lengthText(duration: Duration): string {
  const seconds = Math.round(Math.abs(duration) / 1000);
  if (seconds < 100) return `${seconds} s`;
  const minutes = Math.round(seconds / 60);
  return minutes < 60 ? `${minutes} min` : `${Math.floor(minutes / 60)} h ${two(minutes % 60)} min`;
}
