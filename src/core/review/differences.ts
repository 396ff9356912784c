import type { Duration } from "../units/index.ts";
import { minus } from "../units/index.ts";

/** `a − b`; `null` when either is not known. */
export function difference(a: Duration | null, b: Duration | null): Duration | null {
  return a === null || b === null ? null : minus(a, b);
}
