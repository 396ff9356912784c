import type { Instant, WalkId } from "../../core/units/index.ts";
import { formatInstant } from "../../core/units/index.ts";
import type { RandomBytes } from "./random-text.ts";
import { platformRandomBytes, randomText } from "./random-text.ts";

const WALK_LETTERS = 6;
const DEVICE_LETTERS = 10;
const REMARK_LETTERS = 12;

/** The id of a new walk: `walk-`, the day in UTC, and six random letters or digits (2^30 a day): `walk-2031-04-02-k7f3xa`. */
export function newWalkId(now: Instant, random: RandomBytes = platformRandomBytes): WalkId {
  return `walk-${formatInstant(now).slice(0, 10)}-${randomText(WALK_LETTERS, random)}` as WalkId;
}

/** The `source` of a device that has none yet: `/devices/` and ten random letters or digits (2^50). */
export function newDeviceSource(random: RandomBytes = platformRandomBytes): string {
  return `/devices/${randomText(DEVICE_LETTERS, random)}`;
}

/** The id of a new remark: `remark-` and twelve random letters or digits (2^60). */
export function newRemarkId(random: RandomBytes = platformRandomBytes): string {
  return `remark-${randomText(REMARK_LETTERS, random)}`;
}
