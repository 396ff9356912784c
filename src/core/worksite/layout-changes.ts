import type { Change, Procedure } from "../procedure/index.ts";
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

const toDecimetre = (metres: number): number => Math.round(metres * 10) / 10 + 0;
