import type { Duration } from "../units/index.ts";
import { minus } from "../units/index.ts";

/** Returns `a − b`, or `null` when either is unknown. */
export function difference(a: Duration | null, b: Duration | null): Duration | null {
  return a === null || b === null ? null : minus(a, b);
}
