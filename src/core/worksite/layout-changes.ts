import type { Change, Procedure } from "../procedure/index.ts";
import type { PlaceId } from "../units/index.ts";
import type { SitePoint } from "./layout.ts";
import { layoutOf } from "./layout.ts";

/** The changes that write a layout that was worked out into the file, to the decimetre; none where all places have theirs. */
export function layoutChanges(procedure: Procedure): readonly Change[] {
  const { places, laidOut } = layoutOf(procedure);
  return [...places].flatMap(([id, { x, y }]) =>
    laidOut.has(id)
      ? [{ change: id, list: "places" as const, set: { x: toDecimetre(x), y: toDecimetre(y) } }]
      : [],
  );
}

/** The changes that put a place at a point, to the decimetre; its height stays. */
export const placeMoved = (place: PlaceId, { x, y }: Pick<SitePoint, "x" | "y">): readonly Change[] => [
  { change: place, list: "places", set: { x: toDecimetre(x), y: toDecimetre(y) } },
];

const toDecimetre = (metres: number): number => Math.round(metres * 10) / 10 + 0;
