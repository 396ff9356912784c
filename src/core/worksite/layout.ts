import { waysOf } from "../place/index.ts";
import { seededSource } from "../plan/index.ts";
import type { Place, Procedure } from "../procedure/index.ts";
import type { PlaceId } from "../units/index.ts";

import type { FlatPoint, StressCase } from "./stress.ts";
import { leastStress } from "./stress.ts";

/** A position in metres along the axes of the author of the procedure; `z` is up. */
export interface SitePoint extends FlatPoint {
  readonly z: number;
}

/** Where the places of a procedure lie on the map. */
export interface WorksiteLayout {
  /** Every place of the procedure, in the order of the file, with its position in metres. */
  readonly places: ReadonlyMap<PlaceId, SitePoint>;
  /** The places without `x` and `y` in the file, which were laid out from the lengths of the ways. */
  readonly laidOut: ReadonlySet<PlaceId>;
  /** True when distances on the map cannot be measured: places were laid out, or positions and lengths disagree. */
  readonly isSketch: boolean;
  /** True when the places differ in height, so that a side view says something. */
  readonly hasHeight: boolean;
}

/** More places than this are not laid out by their distances, which takes a time that grows with their square. */
const MOST_LAID_OUT = 150;
/** A way may be shorter than the straight line between its ends by this share, for figures that were rounded. */
const ROUNDED = 0.05;

const layouts = new WeakMap<Procedure, WorksiteLayout>();

/**
 * Where the places of a procedure lie ([MAP2]): as given, or laid out from the lengths of the shortest ways. The same
 * procedure gives the same layout. Results are cached for each procedure.
 */
export function layoutOf(procedure: Procedure): WorksiteLayout {
  const kept = layouts.get(procedure);
  if (kept) return kept;
  const layout = laidOutOf(procedure);
  layouts.set(procedure, layout);
  return layout;
}

function laidOutOf(procedure: Procedure): WorksiteLayout {
  const { places } = procedure;
  const laidOut = new Set(places.filter((place) => givenPoint(place) === null).map(({ id }) => id));
  const flat = laidOut.size > 0 ? flatPoints(procedure, laidOut) : null;
  const points = new Map(
    places.map((place): [PlaceId, SitePoint] => {
      const { x, y } = givenPoint(place) ?? flat?.get(place.id) ?? { x: 0, y: 0 };
      return [place.id, { x, y, z: place.z ?? 0 }];
    }),
  );
  const heights = [...points.values()].map(({ z }) => z);
  return {
    places: points,
    laidOut,
    isSketch: laidOut.size > 0 || procedure.routes.some((route) => isShorterThanStraight(route, points)),
    hasHeight: heights.some((z) => z !== heights[0]),
  };
}

function givenPoint({ x, y }: Place): FlatPoint | null {
  return x === undefined || y === undefined ? null : { x, y };
}

/** True when a way is shorter than the straight line between its ends: the map would show it too long. */
function isShorterThanStraight(
  { between, length }: Procedure["routes"][number],
  points: ReadonlyMap<PlaceId, SitePoint>,
): boolean {
  const [a, b] = between.map((id) => points.get(id));
  return a !== undefined && b !== undefined && trueLength(a, b) > length * (1 + ROUNDED);
}

/** The metres between two points, their difference in height included. */
export function trueLength(a: SitePoint, b: SitePoint): number {
  return Math.hypot(a.x - b.x, a.y - b.y, a.z - b.z);
}

function flatPoints(procedure: Procedure, laidOut: ReadonlySet<PlaceId>): ReadonlyMap<PlaceId, FlatPoint> {
  const found = new Map<PlaceId, FlatPoint>();
  for (const place of procedure.places) {
    const given = givenPoint(place);
    if (given) found.set(place.id, given);
  }
  if (laidOut.size > MOST_LAID_OUT) return onAGrid(procedure, found);
  // The parts that hold a given place come first, since the others are put beside them.
  const parts = joinedParts(procedure);
  const isAnchored = (part: readonly PlaceId[]) => part.some((id) => found.has(id));
  for (const part of [...parts.filter(isAnchored), ...parts.filter((one) => !isAnchored(one))]) {
    if (part.every((id) => found.has(id))) continue;
    const anchored = isAnchored(part);
    const points = leastStress(stressCaseOf(procedure, part, found), seededSource(1));
    const placed = anchored ? points : beside(turnedLevel(points), [...found.values()]);
    for (const [index, id] of part.entries()) {
      const point = placed[index];
      if (point) found.set(id, point);
    }
  }
  return found;
}

/** The places that ways join, part by part, each part and all of them in the order of the file. */
function joinedParts({ places, routes }: Procedure): PlaceId[][] {
  const partOf = new Map<PlaceId, PlaceId[]>(places.map(({ id }) => [id, [id]]));
  for (const { between } of routes) {
    const [one, other] = between.map((id) => partOf.get(id));
    if (!one || !other || one === other) continue;
    for (const id of other) {
      one.push(id);
      partOf.set(id, one);
    }
  }
  const order = new Map(places.map(({ id }, index) => [id, index]));
  return [...new Set(places.map(({ id }) => partOf.get(id) ?? [id]))].map((part) =>
    part.toSorted((a, b) => (order.get(a) ?? 0) - (order.get(b) ?? 0)),
  );
}

function stressCaseOf(
  procedure: Procedure,
  part: readonly PlaceId[],
  given: ReadonlyMap<PlaceId, FlatPoint>,
): StressCase {
  const ways = waysOf(procedure);
  const lengths = part.map((from) => part.map((to) => ways.shortest(from, to)?.cost ?? 0));
  const longest = Math.max(...lengths.flat());
  // A way of no length would weigh infinitely. Its ends are drawn a little apart, so that both can be seen.
  const least = longest > 0 ? longest / 20 : 1;
  return {
    distances: lengths.map((row) => row.map((length) => Math.max(length, least))),
    fixed: part.map((id) => given.get(id) ?? null),
  };
}

/** Turns a layout so that its longest extent lies level, with its first place on the left and not below the middle. */
function turnedLevel(points: readonly FlatPoint[]): readonly FlatPoint[] {
  const count = points.length;
  const [mx, my] = [
    points.reduce((sum, { x }) => sum + x, 0) / count,
    points.reduce((sum, { y }) => sum + y, 0) / count,
  ];
  const centred = points.map(({ x, y }) => ({ x: x - mx, y: y - my }));
  const sumOf = (product: (point: FlatPoint) => number) =>
    centred.reduce((sum, point) => sum + product(point), 0);
  const [xx, yy, xy] = [sumOf(({ x }) => x * x), sumOf(({ y }) => y * y), sumOf(({ x, y }) => x * y)];
  const angle = Math.atan2(2 * xy, xx - yy) / 2;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const level = centred.map(({ x, y }) => ({ x: x * cos + y * sin, y: y * cos - x * sin }));
  const [flipX, flipY] = [(level[0]?.x ?? 0) > 1e-9 ? -1 : 1, (level[0]?.y ?? 0) < -1e-9 ? -1 : 1];
  return level.map(({ x, y }) => ({ x: x * flipX, y: y * flipY }));
}

/** Puts a part of the layout to the right of what is laid out already. */
function beside(points: readonly FlatPoint[], others: readonly FlatPoint[]): readonly FlatPoint[] {
  if (others.length === 0) return points;
  const extent = (axis: "x" | "y", list: readonly FlatPoint[]) => {
    const all = list.map((point) => point[axis]);
    return { least: Math.min(...all), most: Math.max(...all) };
  };
  const [own, taken] = [extent("x", points), extent("x", others)];
  const gap = Math.max((taken.most - taken.least) / 5, (own.most - own.least) / 5, 1);
  const middle = (list: readonly FlatPoint[]) => {
    const { least, most } = extent("y", list);
    return (least + most) / 2;
  };
  const [right, down] = [taken.most + gap - own.least, middle(others) - middle(points)];
  return points.map(({ x, y }) => ({ x: x + right, y: y + down }));
}

/** Lays the places that have no position out in rows, in the order of the file. */
function onAGrid(
  { places }: Procedure,
  given: ReadonlyMap<PlaceId, FlatPoint>,
): ReadonlyMap<PlaceId, FlatPoint> {
  const loose = places.filter(({ id }) => !given.has(id));
  const columns = Math.ceil(Math.sqrt(loose.length));
  const rows = loose.map((_, index) => ({ x: (index % columns) * 5, y: -Math.floor(index / columns) * 5 }));
  const placed = beside(rows, [...given.values()]);
  return new Map([
    ...given,
    ...loose.flatMap(({ id }, index) => {
      const point = placed[index];
      return point ? [[id, point] as const] : [];
    }),
  ]);
}
