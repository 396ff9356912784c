import type { Duration } from "../units/index.ts";

/** A stretch of time in PET, from `start` to `finish`. The two are equal for something of no length. */
export interface Stretch {
  readonly start: Duration;
  readonly finish: Duration;
}
