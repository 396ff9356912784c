import type { Vector } from "./orbit.ts";

/** The radius of the Earth as it casts its shadow: a sphere of the equatorial radius, km (WGS 84). */
export const SHADOW_EARTH_RADIUS = 6378.137;
/** The Sun's radius, km (IAU 2015 Resolution B3, nominal). */
export const SUN_RADIUS = 695_700;

/** How far the Sun is from being covered by the Earth, seen from a vehicle, in radians. */
export interface ShadowDepth {
  /** Below zero in the umbra, where the whole Sun is covered. */
  readonly umbra: number;
  /** Below zero in the umbra and the penumbra, where at least part of the Sun is covered. */
  readonly penumbra: number;
}

const length = ({ x, y, z }: Vector) => Math.hypot(x, y, z);

/**
 * The depth in the conical shadow of the Earth (Montenbruck & Gill 2000, §3.4). With the apparent radii a of the Sun
 * and b of the Earth and their separation c, the umbra is c < b − a and the penumbra c < a + b. `position` and `sun`
 * are geocentric, in km, in the same frame.
 */
export function shadowDepth(
  position: Vector,
  sun: Vector,
  earth = SHADOW_EARTH_RADIUS,
  sunRadius = SUN_RADIUS,
): ShadowDepth {
  const toSun = { x: sun.x - position.x, y: sun.y - position.y, z: sun.z - position.z };
  const [distance, far] = [length(position), length(toSun)];
  const a = Math.asin(Math.min(1, sunRadius / far));
  const b = Math.asin(Math.min(1, earth / distance));
  const cosine = -(position.x * toSun.x + position.y * toSun.y + position.z * toSun.z) / (distance * far);
  const c = Math.acos(Math.min(1, Math.max(-1, cosine)));
  return { umbra: c - (b - a), penumbra: c - (a + b) };
}
