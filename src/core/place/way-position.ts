import type { Metres, PlaceId } from "../units/index.ts";
import type { Ways } from "./ways.ts";

/** A position on the way between two places. */
export interface WayPosition {
  /** The places behind it, from the start of the way on; at least that one. */
  readonly passed: readonly PlaceId[];
  /** The leg on which it lies. */
  readonly from: PlaceId;
  readonly to: PlaceId;
  /** The metres of the leg that are behind it. */
  readonly walked: Metres;
  /** The length of the leg. */
  readonly length: Metres;
}

/**
 * The position once `share` (0 to 1) of the length of the way from one place to another is behind it. The way is the
 * quickest, or the shortest where no times are known, as for a line ([PLN7]). Returns `null` where no routes lead there.
 */
export function positionOnWay(ways: Ways, from: PlaceId, to: PlaceId, share: number): WayPosition | null {
  const way = ways.quickest(from, to) ?? ways.shortest(from, to);
  if (!way || way.places.length < 2) return null;
  const legs: { readonly from: PlaceId; readonly to: PlaceId; readonly length: Metres }[] = [];
  for (const [index, end] of way.places.entries()) {
    const start = way.places[index - 1];
    if (start === undefined) continue;
    const length = ways.leg(start, end);
    if (length === null) return null;
    legs.push({ from: start, to: end, length });
  }
  let rest = legs.reduce((sum, { length }) => sum + length, 0) * share;
  const passed: PlaceId[] = [from];
  for (const leg of legs) {
    if (rest <= leg.length || leg === legs.at(-1)) {
      return { passed, ...leg, walked: Math.min(rest, leg.length) as Metres };
    }
    rest -= leg.length;
    passed.push(leg.to);
  }
  return null;
}

/**
 * A line's places once its crew member has gone on to another place: walking back along it takes it up again. `places`
 * is left as it is.
 */
export function lineOver(places: readonly PlaceId[], next: PlaceId): readonly PlaceId[] {
  if (places.at(-1) === next) return places;
  return places.at(-2) === next ? places.slice(0, -1) : [...places, next];
}
