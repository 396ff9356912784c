import type { StepRecord } from "../procedure/index.ts";

/** How far outside its limits a value is that is entered to see what comes of it. */
const BEYOND = 5;

/** A value outside the limits of a record; `null` for a record without limits. */
export function outsideValue({ min, max }: StepRecord): number | null {
  if (min !== undefined) return min - BEYOND;
  return max === undefined ? null : max + BEYOND;
}

/** A value within the limits of a record. */
export function withinValue({ min, max }: StepRecord): number {
  if (min !== undefined && max !== undefined) return (min + max) / 2;
  return min ?? max ?? 0;
}
