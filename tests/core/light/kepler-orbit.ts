import type { Orbit, Vector } from "../../../src/core/light/index.ts";
import { readOrbit } from "../../../src/core/light/index.ts";
import type { Duration, Instant } from "../../../src/core/units/index.ts";

/** The Earth's gravity, km³/s² (WGS 84). */
export const GRAVITY = 398_600.4418;

const ANY_SET = readOrbit(
  "1 25544U 98067A   24127.82853009  .00015698  00000+0  27310-3 0  9995\n" +
    "2 25544  51.6393 160.4574 0003580 140.6673 205.7250 15.50957674452123",
);

/** An element set where one is needed but not looked at. */
export function anyElements() {
  if (!ANY_SET.elements) throw new Error("the set is sound");
  return ANY_SET.elements;
}

const scaled = ({ x, y, z }: Vector, by: number): Vector => ({ x: x * by, y: y * by, z: z * by });
const sum = (a: Vector, b: Vector): Vector => ({ x: a.x + b.x, y: a.y + b.y, z: a.z + b.z });
const dot = (a: Vector, b: Vector) => a.x * b.x + a.y * b.y + a.z * b.z;
const cross = (a: Vector, b: Vector): Vector => ({
  x: a.y * b.z - a.z * b.y,
  y: a.z * b.x - a.x * b.z,
  z: a.x * b.y - a.y * b.x,
});
const unit = (a: Vector) => scaled(a, 1 / Math.sqrt(dot(a, a)));

/** A two-body orbit from a position (km) and a velocity (km/s) at an instant; it may be any ellipse. */
export function keplerOrbit(
  position: Vector,
  velocity: Vector,
  epoch: Instant,
  gravity: number = GRAVITY,
): Orbit {
  const r = Math.sqrt(dot(position, position));
  const a = 1 / (2 / r - dot(velocity, velocity) / gravity);
  const normal = unit(cross(position, velocity));
  const toPericenter = sum(
    scaled(cross(velocity, cross(position, velocity)), 1 / gravity),
    scaled(position, -1 / r),
  );
  const e = Math.sqrt(dot(toPericenter, toPericenter));
  const p = e < 1e-12 ? unit(position) : unit(toPericenter);
  const q = cross(normal, p);
  const motion = Math.sqrt(gravity / a ** 3);
  const start = Math.atan2(dot(position, q) / (a * Math.sqrt(1 - e * e)), dot(position, p) / a + e);
  const meanAtEpoch = start - e * Math.sin(start);
  const period = (2 * Math.PI * 1000) / motion;
  return {
    elements: anyElements(),
    period: Math.round(period) as Duration,
    quickPeriod: Math.round((period * (1 - e * e) ** 1.5) / (1 + e) ** 2) as Duration,
    at: (instant) => {
      const mean = meanAtEpoch + (motion * (instant - epoch)) / 1000;
      let eccentric = mean + e * Math.sin(mean);
      for (let turn = 0; turn < 20; turn += 1) {
        eccentric -= (eccentric - e * Math.sin(eccentric) - mean) / (1 - e * Math.cos(eccentric));
      }
      return sum(
        scaled(p, a * (Math.cos(eccentric) - e)),
        scaled(q, a * Math.sqrt(1 - e * e) * Math.sin(eccentric)),
      );
    },
  };
}

/**
 * A circular orbit of a radius (km) that is at its noon at an instant; `beta` is the angle of the Sun, which stands in the
 * direction `sun`, above the plane of the orbit, in degrees.
 */
export function circularOrbit(
  radius: number,
  beta: number,
  sun: Vector,
  noon: Instant,
  gravity: number = GRAVITY,
): Orbit {
  const toSun = unit(sun);
  const across = unit(cross(Math.abs(toSun.z) < 0.9 ? { x: 0, y: 0, z: 1 } : { x: 1, y: 0, z: 0 }, toSun));
  const up = cross(toSun, across);
  const angle = (beta * Math.PI) / 180;
  const toNoon = sum(scaled(toSun, Math.cos(angle)), scaled(up, -Math.sin(angle)));
  const speed = Math.sqrt(gravity / radius);
  return keplerOrbit(scaled(toNoon, radius), scaled(across, speed), noon, gravity);
}
