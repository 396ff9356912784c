import { appliedOffset } from "../../core/log/index.ts";
import type { Duration } from "../../core/units/index.ts";
import { NO_TIME } from "../../core/units/index.ts";
import type { Folded } from "../../core/walk/index.ts";

/** How far the walk's clock is ahead of a device's own clock, by that device's last comparison in the log. */
export function ownClockOffset({ clocks }: Folded, device: string): Duration {
  const reading = clocks.findLast((one) => one.device === device);
  return reading ? appliedOffset(reading) : NO_TIME;
}
