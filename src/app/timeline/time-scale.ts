import { range } from "d3-array";
import { scaleLinear } from "d3-scale";
import type { Duration } from "../../core/units/index.ts";
import type { MessageKey } from "../../words/index.ts";

const MINUTE = 60_000;
const TICK_STEPS = [1, 2, 5, 10, 15, 30, 60, 120, 240].map((minutes) => minutes * MINUTE);
const CLOSEST_TICKS = 64;
const LEFT = 10;
const RIGHT = 14;

/** How much of the walk is seen at once: all of it, or so much time. */
export type Zoom = "whole" | Duration;

/** What the reader may choose, from far to near. */
export const ZOOMS = [
  { zoom: "whole", label: "timeline/zoom-whole" },
  { zoom: (60 * MINUTE) as Duration, label: "timeline/zoom-hour" },
  { zoom: (20 * MINUTE) as Duration, label: "timeline/zoom-twenty-minutes" },
] as const satisfies readonly { readonly zoom: Zoom; readonly label: MessageKey }[];

/** Where times stand on the drawing. */
export interface TimeScale {
  /** Width of the whole drawing in px. */
  readonly width: number;
  /** PET at its right edge. */
  readonly end: Duration;
  readonly ticks: readonly Duration[];
  /** The x of a PET, to half a pixel, so that a bar is drawn again only when it moves. */
  readonly x: (pet: number) => number;
  /** The PET at an x. */
  readonly pet: (x: number) => number;
}

/** The scale from PET 0 to `end`, seen through a window `visible` px wide. */
export function timeScaleOf(end: Duration, visible: number, zoom: Zoom): TimeScale {
  const shown = zoom === "whole" ? end : Math.min(zoom, end);
  const room = Math.max(120, visible - LEFT - RIGHT);
  const length = (room * end) / shown;
  const scale = scaleLinear([0, end], [LEFT, LEFT + length]);
  const step = TICK_STEPS.find((one) => (one * length) / end >= CLOSEST_TICKS) ?? 480 * MINUTE;
  return {
    width: Math.round(LEFT + length + RIGHT),
    end,
    ticks: range(0, end + 1, step) as Duration[],
    x: (pet) => Math.round(scale(pet) * 2) / 2,
    pet: (x) => scale.invert(x),
  };
}
