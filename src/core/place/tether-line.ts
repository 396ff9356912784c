import type { Network } from "../order/index.ts";
import type { PlaceId } from "../units/index.ts";
import type { Ways } from "./ways.ts";
import type { Whereabouts } from "./whereabouts.ts";

/** A tethered crew member's line during one step. */
export interface TetherStep {
  readonly step: number;
  /** Where the tether is anchored when the step starts. */
  readonly anchor: PlaceId;
  /** Where the performer is when the step starts, and when it ends; `null` when not known. */
  readonly start: PlaceId | null;
  readonly end: PlaceId | null;
  /** Where the step moves the anchor; `null` when it leaves it. */
  readonly moved: PlaceId | null;
}

/** The steps of a tethered crew member's lane with its tether; none for a crew member without one. */
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

/** The steps during which a line lies over a route, from the one that lays it there to the one that takes it up, both included. */
export interface LineSpan {
  readonly from: number;
  readonly to: number;
}

/** Names a route by the two places it joins, whichever way it is walked. */
export function routeKey(a: PlaceId, b: PlaceId): string {
  return a < b ? `${a} ${b}` : `${b} ${a}`;
}

/** A line over one route while it is followed. */
interface Laid {
  /** How often the line runs over the route. */
  times: number;
  readonly from: number;
  /** The last step that took it up. */
  to: number;
}

/**
 * Where a tethered crew member's line lies: for each route it comes to lie over, when. The line runs from the anchor along the ways
 * walked (the quickest, else the shortest), going back the way one came takes it up again, and moving the anchor starts it
 * anew ([PLN7]). A way that no routes give lays no line.
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
  let line: PlaceId[] = [];
  const close = (key: string, { from, to }: Laid) => {
    const known = spans.get(key);
    if (known) known.push({ from, to });
    else spans.set(key, [{ from, to }]);
    laid.delete(key);
  };
  const lay = (a: PlaceId, b: PlaceId, step: number) => {
    const key = routeKey(a, b);
    const known = laid.get(key);
    if (known && known.times === 0 && known.to !== step) close(key, known);
    const now = laid.get(key) ?? { times: 0, from: step, to: step };
    now.times += 1;
    laid.set(key, now);
  };
  const takeUp = (a: PlaceId, b: PlaceId, step: number) => {
    const known = laid.get(routeKey(a, b));
    if (!known) return;
    known.times -= 1;
    known.to = step;
  };
  const walk = (places: readonly PlaceId[], step: number) => {
    for (const place of places) {
      const here = line.at(-1);
      if (here === undefined) line = [place];
      else if (line.at(-2) === place) {
        line.pop();
        takeUp(here, place, step);
      } else if (here !== place) {
        line.push(place);
        lay(here, place, step);
      }
    }
  };
  const walkTo = (place: PlaceId, step: number) => {
    const here = line.at(-1) ?? place;
    const way = ways.quickest(here, place) ?? ways.shortest(here, place);
    if (way) walk(way.places, step);
    else startAt(place, step);
  };
  const startAt = (place: PlaceId, step: number) => {
    for (const [position, one] of line.entries()) {
      const next = line[position + 1];
      if (next !== undefined) takeUp(one, next, step);
    }
    line = [place];
  };
  const runFrom = (anchor: PlaceId, place: PlaceId, step: number) => {
    const way = ways.shortest(anchor, place);
    startAt(way ? anchor : place, step);
    if (way) walk(way.places, step);
  };
  for (const { step, anchor, start, end, moved } of steps) {
    if (start !== null && line.length === 0) runFrom(anchor, start, step);
    if (start !== null) walkTo(start, step);
    if (end !== null) walkTo(end, step);
    if (moved !== null && end !== null) runFrom(moved, end, step);
  }
  const last = steps.at(-1)?.step;
  for (const [key, one] of [...laid]) {
    close(key, one.times > 0 && last !== undefined ? { ...one, to: last } : one);
  }
  return spans;
}
