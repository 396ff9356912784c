import type { Duration } from "../units/index.ts";
import { NO_TIME } from "../units/index.ts";

/** The difference between a device's clock and a hub's. */
export interface ClockOffset {
  /** Add this to the device's clock to get the hub's: above zero when the hub's clock is ahead of the device's. */
  readonly offset: Duration;
  /** The offset is right within plus or minus this. */
  readonly error: Duration;
}

/**
 * The smallest change of a clock offset that is entered in the log, and the largest offset that times are not corrected
 * by, in ms: comparisons over a network are not exact enough for less.
 */
export const WORTH_TELLING = 500;

/** The part of a clock offset that times are corrected by: all of it, or zero while it is at most {@link WORTH_TELLING}. */
export function appliedOffset({ offset }: Pick<ClockOffset, "offset">): Duration {
  return Math.abs(offset) > WORTH_TELLING ? offset : NO_TIME;
}
