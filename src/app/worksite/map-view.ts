import type { DrawnPoint, WorksiteFrame } from "../../core/worksite/index.ts";

/** What of the map is seen: how large it is drawn, and where its upper left corner lies in the room, in px. */
export interface MapView {
  readonly zoom: number;
  readonly x: number;
  readonly y: number;
}

/** The room in which the map is seen, in px. */
export interface MapRoom {
  readonly width: number;
  readonly height: number;
}

/** The whole worksite. */
export const WHOLE: MapView = { zoom: 1, x: 0, y: 0 };

/** How large the map may be drawn, as times of the whole. */
const LARGEST = 8;

/** A zoom within its bounds. */
export const withinZoom = (zoom: number): number => Math.min(LARGEST, Math.max(1, zoom));

/** The share of the room that is never left without a part of the map. */
const KEPT = 0.3;

/** A view of which a part of the map is always seen. At a zoom of 1 the whole map is. */
export function withinRoom(
  view: MapView,
  frame: Pick<WorksiteFrame, "width" | "height">,
  room: MapRoom,
): MapView {
  if (view.zoom <= 1) return WHOLE;
  const bounded = (at: number, drawn: number, seen: number) =>
    Math.min(seen * (1 - KEPT), Math.max(seen * KEPT - drawn, at));
  return {
    zoom: view.zoom,
    x: bounded(view.x, frame.width, room.width),
    y: bounded(view.y, frame.height, room.height),
  };
}

/**
 * The view in which what lies at a point of the room in one frame lies there in another frame too, which is drawn larger
 * or smaller.
 */
export function keepingInPlace(
  view: MapView,
  before: WorksiteFrame,
  after: WorksiteFrame,
  point: DrawnPoint,
  zoom: number,
): MapView {
  const [from, to] = [before.toPlan(ORIGIN), after.toPlan(ORIGIN)];
  const times = after.scale / before.scale;
  return {
    zoom,
    x: point.x - (to.x + (point.x - view.x - from.x) * times),
    y: point.y - (to.y + (point.y - view.y - from.y) * times),
  };
}

const ORIGIN = { x: 0, y: 0, z: 0 } as const;
