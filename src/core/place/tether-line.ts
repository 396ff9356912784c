import type { Network } from "../order/index.ts";
import type { PlaceId } from "../units/index.ts";
import { LaidLine } from "./laid-line.ts";
import type { Ways } from "./ways.ts";
import type { Whereabouts } from "./whereabouts.ts";

/** A tethered crew member's line during one step. */
export interface TetherStep {
  readonly step: number;
  /** Where the tether is anchored when the step starts. */
  readonly anchor: PlaceId;
  /** The performer's place when the step starts; `null` when unknown. */
  readonly start: PlaceId | null;
  /** The performer's place when the step ends; `null` when unknown. */
  readonly end: PlaceId | null;
  /** The place to which the step moves the anchor; `null` when it does not move it. */
  readonly moved: PlaceId | null;
}

/** The steps in the lane of a tethered crew member, each with its tether; empty for a crew member without a tether. */
export function tetherStepsOf(
  { outline, lanes }: Network,
  whereabouts: Whereabouts,
  lane: number,
): TetherStep[] {
  const tether = outline.crew[lane]?.tether;
  if (!tether) return [];
  let anchor = tether.anchor;
  return (lanes[lane] ?? []).flatMap((index): TetherStep[] => {
    const entry = outline.steps[index];
    if (!entry) return [];
    const start = whereabouts.from[index]?.[entry.performers.indexOf(lane)] ?? null;
    const before = anchor;
    anchor = entry.step.anchor ?? anchor;
    return [
      { step: index, anchor: before, start, end: entry.step.to ?? start, moved: entry.step.anchor ?? null },
    ];
  });
}

/**
 * The steps during which a line lies over a route, from the step that lays it to the step that takes it up, both
 * included.
 */
export interface LineSpan {
  readonly from: number;
  readonly to: number;
}

/** A key for the route between two places, the same in both directions. */
export function routeKey(a: PlaceId, b: PlaceId): string {
  return a < b ? `${a} ${b}` : `${b} ${a}`;
}

/** The state of a line over one route while the lane is followed. */
interface Laid {
  /** The number of times that the line runs over the route. */
  times: number;
  readonly from: number;
  /** The last step that took the line up from the route. */
  to: number;
}

/**
 * For each route that a tethered crew member's line comes to lie over, the spans of steps during which it lies there.
 * The line runs from the anchor along the ways that were walked (the quickest, or the shortest where no times are
 * known). Walking back takes it up again, and moving the anchor starts it afresh ([PLN7]). Between places that no
 * routes join, no line is recorded.
 */
export function lineSpansOf(
  network: Network,
  whereabouts: Whereabouts,
  ways: Ways,
  lane: number,
): Map<string, LineSpan[]> {
  const steps = tetherStepsOf(network, whereabouts, lane);
  const spans = new Map<string, LineSpan[]>();
  const laid = new Map<string, Laid>();
  let during = -1;
  const close = (key: string, { from, to }: Laid) => {
    const known = spans.get(key);
    if (known) known.push({ from, to });
    else spans.set(key, [{ from, to }]);
    laid.delete(key);
  };
  const line = new LaidLine(ways, {
    lay: (a, b) => {
      const key = routeKey(a, b);
      const known = laid.get(key);
      if (known && known.times === 0 && known.to !== during) close(key, known);
      const now = laid.get(key) ?? { times: 0, from: during, to: during };
      now.times += 1;
      laid.set(key, now);
    },
    takeUp: (a, b) => {
      const known = laid.get(routeKey(a, b));
      if (!known) return;
      known.times -= 1;
      known.to = during;
    },
  });
  for (const { step, anchor, start, end, moved } of steps) {
    during = step;
    if (start !== null && line.end === null) line.runFrom(anchor, start);
    if (start !== null) line.walkTo(start);
    if (end !== null) line.walkTo(end);
    if (moved !== null && end !== null) line.runFrom(moved, end);
  }
  const last = steps.at(-1)?.step;
  for (const [key, one] of [...laid]) {
    close(key, one.times > 0 && last !== undefined ? { ...one, to: last } : one);
  }
  return spans;
}
