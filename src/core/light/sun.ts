import { Body, GeoVector, MakeTime, RotateVector, Rotation_EQJ_EQD } from "astronomy-engine";
import type { Instant } from "../units/index.ts";
import type { Vector } from "./orbit.ts";

const AU = 149_597_870.7;
const NODE = 3_600_000;

/** The apparent geocentric Sun in the true equator of date, km; of TEME that is within 1.2″ (the equation of the equinoxes). */
export function sunAt(instant: Instant): Vector {
  // VSOP87 as in astronomy-engine, light time and aberration included; good to an arc minute at the very worst.
  const time = MakeTime(new Date(instant));
  const { x, y, z } = RotateVector(Rotation_EQJ_EQD(time), GeoVector(Body.Sun, time, true));
  return { x: x * AU, y: y * AU, z: z * AU };
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
