import { range } from "d3-array";
import { scaleLinear } from "d3-scale";
import type { Duration } from "../../core/units/index.ts";
import type { MessageKey, UtcStyle } from "../../words/index.ts";

const MINUTE = 60_000;
const TICK_STEPS = [1, 2, 5, 10, 15, 30, 60, 120, 240].map((minutes) => minutes * MINUTE);
const CLOSEST_TICKS = 64;
/** With the UTC beside the PET, by its style. */
const CLOSEST_TICKS_UTC: Readonly<Record<UtcStyle, number>> = { plain: 118, day: 190 };
const LEFT = 10;
const RIGHT = 14;

/** How much of the walk is visible at once: all of it, or the given length of time. */
export type Zoom = "whole" | Duration;

/** The zoom levels, from the widest to the closest. */
export const ZOOMS = [
  { zoom: "whole", label: "timeline/zoom-whole" },
  { zoom: (60 * MINUTE) as Duration, label: "timeline/zoom-hour" },
  { zoom: (20 * MINUTE) as Duration, label: "timeline/zoom-twenty-minutes" },
] as const satisfies readonly { readonly zoom: Zoom; readonly label: MessageKey }[];

/** Converts between times and positions on the chart. */
export interface TimeScale {
  /** The width of the whole chart in px. */
  readonly width: number;
  /** The PET at the right edge of the chart. */
  readonly end: Duration;
  readonly ticks: readonly Duration[];
  /** The x of a PET, rounded to half a pixel, so that a bar is drawn again only when it moves. */
  readonly x: (pet: number) => number;
  /** The PET at an x. */
  readonly pet: (x: number) => number;
}

/** The scale from PET 0 to `end` for a chart of which `visible` px are seen at once; `utc` leaves room for it, in its style, at the ticks. */
export function timeScaleOf(
  end: Duration,
  visible: number,
  zoom: Zoom,
  utc: UtcStyle | null = null,
): TimeScale {
  const shown = zoom === "whole" ? end : Math.min(zoom, end);
  const room = Math.max(120, visible - LEFT - RIGHT);
  const length = (room * end) / shown;
  const scale = scaleLinear([0, end], [LEFT, LEFT + length]);
  const closest = utc === null ? CLOSEST_TICKS : CLOSEST_TICKS_UTC[utc];
  const step = TICK_STEPS.find((one) => (one * length) / end >= closest) ?? 480 * MINUTE;
  return {
    width: Math.round(LEFT + length + RIGHT),
    end,
    ticks: range(0, end + 1, step) as Duration[],
    x: (pet) => Math.round(scale(pet) * 2) / 2,
    pet: (x) => scale.invert(x),
  };
}
