import { gstime, json2satrec, sgp4 } from "satellite.js";
import type { Duration, Instant } from "../units/index.ts";
import { between, formatInstant } from "../units/index.ts";
import type { ElementSet } from "./element-set.ts";

/** A place in space, in km. */
export interface Vector {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** Computes where a vehicle is, by SGP4. */
export interface Orbit {
  readonly elements: ElementSet;
  /** The time of one revolution, in ms. */
  readonly period: Duration;
  /**
   * The time of one revolution at the angular speed of the perigee, in ms. It equals the period on a circular orbit and
   * is shorter on any other.
   */
  readonly quickPeriod: Duration;
  /** The position in TEME, in km. Returns `null` when the model says that the orbit has decayed or does not exist. */
  at(instant: Instant): Vector | null;
}

const MINUTE = 60_000;
const DAY = 1440 * MINUTE;

/** The orbit of an element set (Vallado, Crawford, Hujsak & Kelso, AIAA 2006-6753; WGS-72 constants). */
export function orbitOf(elements: ElementSet): Orbit {
  const record = json2satrec({
    OBJECT_NAME: elements.name ?? "",
    OBJECT_ID: elements.designator,
    EPOCH: formatInstant(elements.epoch).slice(0, -1),
    MEAN_MOTION: elements.meanMotion,
    ECCENTRICITY: elements.eccentricity,
    INCLINATION: elements.inclination,
    RA_OF_ASC_NODE: elements.ascendingNode,
    ARG_OF_PERICENTER: elements.argumentOfPericenter,
    MEAN_ANOMALY: elements.meanAnomaly,
    EPHEMERIS_TYPE: 0,
    CLASSIFICATION_TYPE: "U",
    NORAD_CAT_ID: elements.object,
    ELEMENT_SET_NO: 0,
    REV_AT_EPOCH: 0,
    BSTAR: elements.dragTerm,
    MEAN_MOTION_DOT: elements.meanMotionDot,
    MEAN_MOTION_DDOT: elements.meanMotionDdot,
  });
  return {
    elements,
    period: Math.round(DAY / elements.meanMotion) as Duration,
    quickPeriod: quickPeriodOf(elements),
    at: (instant) => {
      // The library cuts its epoch to the millisecond, so the time since the exact epoch is computed here.
      const minutes = (instant - elements.epoch - elements.epochRest) / MINUTE;
      const state = sgp4(record, minutes);
      const position = state?.position;
      if (!position || typeof position === "boolean" || !Number.isFinite(position.x)) return null;
      return position;
    },
  };
}

/**
 * No orbit that clears the ground has a shorter period than this at its momentary angular speed. It is 2π √(R³ / 2μ),
 * for a parabola that touches the ground.
 */
const QUICKEST = 59 * MINUTE;

/** By Kepler's second law the angle at the perigee grows (1 + e)² / (1 − e²)^1.5 times as fast as on average. */
function quickPeriodOf({ meanMotion, eccentricity: e }: ElementSet): Duration {
  const quick = ((DAY / meanMotion) * (1 - e ** 2) ** 1.5) / (1 + e) ** 2;
  return Math.round(Math.max(quick, QUICKEST)) as Duration;
}

/** The age of an element set at an instant; below zero before its epoch. */
export function ageOf(elements: ElementSet, at: Instant): Duration {
  return between(elements.epoch, at);
}

/** An element set whose epoch is further away than this, before or after, calls for a caution ([LGT4]). */
export const AGE_LIMIT = (14 * DAY) as Duration;

/** Greenwich mean sidereal time in radians. UTC stands in for UT1, an error of less than a second (0.0042°). */
export function siderealTime(instant: Instant): number {
  return gstime(instant / DAY + 2_440_587.5);
}
