import type { LaneBar } from "./lane-bar.ts";
import { shownFinish, shownStart } from "./lane-bar.ts";

/**
 * The bar that an arrow key leads to: along the lane, or across to the bar at the same time in the next lane that has
 * bars. Returns `null` for any other key, or when there is no further bar in that direction.
 */
export function barBeside(lanes: readonly (readonly LaneBar[])[], at: LaneBar, key: string): LaneBar | null {
  const lane = lanes[at.lane] ?? [];
  const position = lane.findIndex((bar) => bar.key === at.key);
  switch (key) {
    case "ArrowRight":
      return lane[position + 1] ?? null;
    case "ArrowLeft":
      return lane[position - 1] ?? null;
    case "Home":
      return lane[0] ?? null;
    case "End":
      return lane.at(-1) ?? null;
    case "ArrowDown":
      return nearestIn(lanes.slice(at.lane + 1), middleOf(at));
    case "ArrowUp":
      return nearestIn(lanes.slice(0, at.lane).toReversed(), middleOf(at));
    default:
      return null;
  }
}

/** The bar of a lane that is nearest to a PET, at any distance; `null` for an empty lane. */
export function nearestBar(bars: readonly LaneBar[], pet: number): LaneBar | null {
  let best: LaneBar | null = null;
  let distance = Number.POSITIVE_INFINITY;
  for (const bar of bars) {
    const away = Math.max(shownStart(bar) - pet, pet - shownFinish(bar), 0);
    if (away < distance) {
      best = bar;
      distance = away;
    }
  }
  return best;
}

const middleOf = (bar: LaneBar) => (shownStart(bar) + shownFinish(bar)) / 2;

function nearestIn(lanes: readonly (readonly LaneBar[])[], pet: number): LaneBar | null {
  for (const bars of lanes) {
    const found = nearestBar(bars, pet);
    if (found) return found;
  }
  return null;
}
