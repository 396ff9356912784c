import { Body, GeoVector, MakeTime, RotateVector, Rotation_EQJ_EQD, SiderealTime } from "astronomy-engine";
import type { Instant } from "../units/index.ts";
import type { Vector } from "./orbit.ts";
import { siderealTime } from "./orbit.ts";

const AU = 149_597_870.7;
const NODE = 3_600_000;

const HOURS = 12 / Math.PI;

/** The equation of the equinoxes in radians: how far the equinox of date is ahead of the equinox of TEME, up to 18″. */
export function equationOfEquinoxes(instant: Instant): number {
  const ahead = SiderealTime(MakeTime(new Date(instant))) / HOURS - siderealTime(instant);
  return Math.atan2(Math.sin(ahead), Math.cos(ahead));
}

/** The apparent geocentric position of the Sun in TEME, the frame of SGP4 (true equator, mean equinox), in km. */
export function sunAt(instant: Instant): Vector {
  // VSOP87 as in astronomy-engine, with light time and aberration. The error is an arc minute at the very worst.
  const time = MakeTime(new Date(instant));
  const { x, y, z } = RotateVector(Rotation_EQJ_EQD(time), GeoVector(Body.Sun, time, true));
  const turn = equationOfEquinoxes(instant);
  const [cosine, sine] = [Math.cos(turn) * AU, Math.sin(turn) * AU];
  return { x: cosine * x + sine * y, y: cosine * y - sine * x, z: z * AU };
}

/**
 * Returns a faster {@link sunAt} that interpolates linearly between whole hours. The Sun moves 0.04° an hour, so the
 * error is less than 0.02″, while a search for shadow edges asks a thousand times for each day.
 */
export function steadySun(): (instant: number) => Vector {
  const nodes = new Map<number, Vector>();
  const node = (hour: number): Vector => {
    const known = nodes.get(hour) ?? sunAt((hour * NODE) as Instant);
    nodes.set(hour, known);
    return known;
  };
  return (instant) => {
    const hour = Math.floor(instant / NODE);
    const share = instant / NODE - hour;
    const [from, to] = [node(hour), node(hour + 1)];
    return {
      x: from.x + (to.x - from.x) * share,
      y: from.y + (to.y - from.y) * share,
      z: from.z + (to.z - from.z) * share,
    };
  };
}
