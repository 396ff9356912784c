import type { Duration } from "../../core/units/index.ts";
import type { Folded } from "../../core/walk/index.ts";

/** How far the walk's clock is ahead of a device's own clock, by what the log tells of that clock. */
export function ownClockOffset(folded: Folded, device: string): Duration {
  return folded.clockOffsetOf(device);
}
