import { Body, GeoVector, MakeTime, RotateVector, Rotation_EQJ_EQD, SiderealTime } from "astronomy-engine";
import type { Instant } from "../units/index.ts";
import type { Vector } from "./orbit.ts";
import { siderealTime } from "./orbit.ts";

const AU = 149_597_870.7;
const NODE = 3_600_000;

const HOURS = 12 / Math.PI;

/** The equation of the equinoxes in radians: by so much the equinox of date stands ahead of that of TEME, up to 18″. */
export function equationOfEquinoxes(instant: Instant): number {
  const ahead = SiderealTime(MakeTime(new Date(instant))) / HOURS - siderealTime(instant);
  return Math.atan2(Math.sin(ahead), Math.cos(ahead));
}

/** The apparent geocentric Sun in TEME, the frame of SGP4 (true equator, mean equinox), km. */
export function sunAt(instant: Instant): Vector {
  // VSOP87 as in astronomy-engine, light time and aberration included; good to an arc minute at the very worst.
  const time = MakeTime(new Date(instant));
  const { x, y, z } = RotateVector(Rotation_EQJ_EQD(time), GeoVector(Body.Sun, time, true));
  const turn = equationOfEquinoxes(instant);
  const [cosine, sine] = [Math.cos(turn) * AU, Math.sin(turn) * AU];
  return { x: cosine * x + sine * y, y: cosine * y - sine * x, z: z * AU };
}

/**
 * The same, between whole hours taken as a straight line: the Sun moves 0.04° an hour, so that the bow is off by less than
 * 0.02″, while a search for shadow edges asks a thousand times a day.
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
