import type { Procedure } from "../procedure/index.ts";
import type { Metres, PlaceId } from "../units/index.ts";
import { layoutOf, trueLength } from "./layout.ts";

/** A difference below this, in metres, is one of the computer's figures and not of the site. */
const NOTHING = 1e-6;

/**
 * The metres straight between two places, up to the next decimetre, since a way between them is never shorter; `null` where one of them
 * has no position in the file, so that it can only be guessed.
 */
export function measuredLength(procedure: Procedure, one: PlaceId, other: PlaceId): Metres | null {
  const { places, laidOut } = layoutOf(procedure);
  const [a, b] = [places.get(one), places.get(other)];
  if (!a || !b || laidOut.has(one) || laidOut.has(other)) return null;
  return (Math.ceil((trueLength(a, b) - NOTHING) * 10) / 10) as Metres;
}
