import type { BraidMarker, BraidScale, PlacedRow } from "./braid-geometry.ts";
import { BEND, strandPath } from "./braid-geometry.ts";

/** A marker with its position, and the height of the ring at the step it waits for; `null` without a ring. */
export interface PlacedMarker {
  readonly lane: number;
  readonly y: number;
  readonly ring: number | null;
}

/**
 * The braid beside one task. All positions are measured from the top of the segment, so that a task that did not change
 * is not drawn again when it moves, and a task out of sight costs nothing.
 */
export interface BraidSegment {
  readonly key: string;
  readonly height: number;
  readonly rows: readonly PlacedRow[];
  /**
   * The strands that pass, each as an SVG path. A path may begin above the segment and end below it; the segment clips
   * it.
   */
  readonly paths: readonly { readonly lane: number; readonly from: number; readonly d: string }[];
  readonly markers: readonly PlacedMarker[];
}

/** How far above the middle of its task's heading a segment begins, in px. */
const ABOVE_HEADING = 18;

/** How far beyond its own ends a segment looks for beads, in px. */
const REACH = 4 * BEND;

/** The braid beside a whole list. */
interface WholeBraid {
  readonly rows: readonly PlacedRow[];
  readonly markers: readonly BraidMarker[];
  /** The number of lanes. */
  readonly lanes: number;
  /** The height of the list in px. */
  readonly height: number;
  readonly scale: BraidScale;
}

/** Cuts the braid beside a list into segments, one for each heading. */
export function segmentsOf({ rows, markers, lanes, height, scale }: WholeBraid): BraidSegment[] {
  const places = markers.map((marker) => ({ ...marker, y: markerY(marker, rows) }));
  const firsts = rows.flatMap((row, index) => (index === 0 || row.lanes.length === 0 ? [index] : []));
  const byLane = Array.from({ length: lanes }, (_, lane) =>
    rows.filter((row) => row.stage !== "gone" && row.lanes.includes(lane)),
  );
  const topOf = (first: number | undefined) =>
    first === undefined ? height : first === 0 ? 0 : Math.max(0, (rows[first]?.y ?? 0) - ABOVE_HEADING);
  return firsts.map((first, place) => {
    const next = firsts[place + 1];
    const [top, bottom] = [topOf(first), topOf(next)];
    const own = rows.slice(first, next);
    return {
      key: own[0]?.key ?? "",
      height: Math.max(0, bottom - top),
      rows: own.flatMap((row) => (row.lanes.length > 0 ? [{ ...row, y: row.y - top }] : [])),
      paths: byLane.flatMap((all, lane) => {
        const at = places.find((one) => one.lane === lane);
        const end = endOf(at, all.at(-1)) ?? height;
        if (end < top) return [];
        const hang = at?.waiting && at.at !== null ? { from: at.y + scale.marker - top, to: at.at } : null;
        // No bead further away reaches into the segment. Only a loose strand is drawn as far as the step it waits for.
        const [from, until] = [Math.max(0, top - REACH), Math.min(end, bottom + REACH)];
        const near = all.flatMap((row) =>
          (row.y >= from && row.y <= until) || (row.key === hang?.to && row.y > from)
            ? [{ ...row, y: row.y - top }]
            : [],
        );
        const course = { lane, rows: near, from: from - top, end: until - top, scale, hang };
        return [{ lane, from: course.from, d: strandPath(course) }];
      }),
      markers: places.flatMap(({ lane, y, waiting, at }) => {
        const target = waiting ? rows.find(({ key }) => key === at)?.y : undefined;
        const ring = target !== undefined && target - y > 40 ? target - 20 : null;
        const isHere = [y, ring].some((one) => one !== null && one > top - 20 && one < bottom + 20);
        return isHere ? [{ lane, y: y - top, ring: ring === null ? null : ring - top }] : [];
      }),
    };
  });
}

/** Returns `next`, with every segment that looks the same as before replaced by the earlier object. */
export function keepSegments(before: readonly BraidSegment[], next: readonly BraidSegment[]): BraidSegment[] {
  const known = new Map(before.map((segment) => [segment.key, segment]));
  return next.map((segment) => {
    const old = known.get(segment.key);
    return old && looksSame(old, segment) ? old : segment;
  });
}

function looksSame(a: BraidSegment, b: BraidSegment): boolean {
  return (
    a.height === b.height &&
    sameList(
      a.rows,
      b.rows,
      (one, other) =>
        one.key === other.key && one.y === other.y && one.stage === other.stage && one.lanes === other.lanes,
    ) &&
    sameList(
      a.paths,
      b.paths,
      (one, other) => one.lane === other.lane && one.from === other.from && one.d === other.d,
    ) &&
    sameList(
      a.markers,
      b.markers,
      (one, other) => one.lane === other.lane && one.y === other.y && one.ring === other.ring,
    )
  );
}

function sameList<One>(
  a: readonly One[],
  b: readonly One[],
  same: (one: One, other: One) => boolean,
): boolean {
  return (
    a.length === b.length &&
    a.every((one, index) => {
      const other = b[index];
      return other !== undefined && same(one, other);
    })
  );
}

/** Where a strand ends: at its last bead, or at the marker below it. */
function endOf(place: { readonly y: number } | undefined, last: PlacedRow | undefined): number | undefined {
  return last && place ? Math.max(last.y, place.y) : last?.y;
}

/**
 * The height of a marker: on the bead of a step in work, above a knot, or, while waiting, below the last step that is
 * completed.
 */
function markerY(marker: BraidMarker, rows: readonly PlacedRow[]): number {
  const target = rows.findIndex(({ key }) => key === marker.at);
  const row = rows[target];
  if (row && !marker.waiting) return row.lanes.length > 1 ? row.y - 36 : row.y;
  const behind = rows
    .slice(0, row ? target : rows.length)
    .findLast(({ lanes }) => lanes.includes(marker.lane));
  if (!behind) return 22;
  const below = behind.y + (behind.lanes.length > 1 ? 34 : 26);
  return row ? Math.min(below, row.y - 36) : below;
}
