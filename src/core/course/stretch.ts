import type { Duration } from "../units/index.ts";

/** A stretch of time in PET, from `start` to `finish`; both are the same for something of no length. */
export interface Stretch {
  readonly start: Duration;
  readonly finish: Duration;
}
