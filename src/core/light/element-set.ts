import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { Instant } from "../units/index.ts";

/** The mean elements of an orbit for SGP4, as a feed publishes them. Angles are in degrees. */
export interface ElementSet {
  /** `null` when the set has no name. */
  readonly name: string | null;
  /** Catalogue number. */
  readonly object: number;
  /** International designator, as written; empty when the set has none. */
  readonly designator: string;
  /** The epoch in UTC, cut to the millisecond. `epochRest` is the rest. */
  readonly epoch: Instant;
  /**
   * The fraction of a millisecond cut off from `epoch`, from 0 to below 1. A millisecond is seven metres along the
   * orbit, so the fraction is kept.
   */
  readonly epochRest: number;
  /** Revolutions per day. */
  readonly meanMotion: number;
  readonly eccentricity: number;
  readonly inclination: number;
  readonly ascendingNode: number;
  readonly argumentOfPericenter: number;
  readonly meanAnomaly: number;
  /** Drag term, per Earth radius. */
  readonly dragTerm: number;
  /** First derivative of the mean motion as published (already halved), revolutions per day². */
  readonly meanMotionDot: number;
  /** Second derivative as published (already divided by six), revolutions per day³. */
  readonly meanMotionDdot: number;
  /** The form in which the set was written. */
  readonly form: "OMM (JSON)" | "OMM (KVN)" | "OMM (XML)" | "TLE";
}

/** Why an orbit file is refused: the field and the reason. */
export interface OrbitProblem {
  /** A keyword as the standard writes it, or a message that names another part of the file. */
  readonly field: string | Message;
  readonly reason: Message;
}

/** The result of reading an orbit file. */
export type ReadOrbit =
  | { readonly elements: ElementSet; readonly problems: readonly [] }
  | { readonly elements: null; readonly problems: readonly OrbitProblem[] };

/** The result for an orbit file that is refused. */
export function refusedOrbit(problems: readonly OrbitProblem[]): ReadOrbit {
  return { elements: null, problems };
}

interface Range {
  readonly field: string;
  readonly value: number;
  readonly from: number;
  readonly to: number;
}

/**
 * The problems of values outside the range in which SGP4 is meaningful (Hoots & Roehrich 1980, Spacetrack Report 3; the
 * bounds are common practice).
 */
export function rangeProblems(set: ElementSet): OrbitProblem[] {
  const ranges: readonly Range[] = [
    { field: "MEAN_MOTION", value: set.meanMotion, from: 0.0001, to: 18 },
    { field: "ECCENTRICITY", value: set.eccentricity, from: 0, to: 0.9999999 },
    { field: "INCLINATION", value: set.inclination, from: 0, to: 180 },
    { field: "RA_OF_ASC_NODE", value: set.ascendingNode, from: -360, to: 360 },
    { field: "ARG_OF_PERICENTER", value: set.argumentOfPericenter, from: -360, to: 360 },
    { field: "MEAN_ANOMALY", value: set.meanAnomaly, from: -360, to: 360 },
    { field: "BSTAR", value: set.dragTerm, from: -1, to: 1 },
    { field: "MEAN_MOTION_DOT", value: set.meanMotionDot, from: -100, to: 100 },
    { field: "MEAN_MOTION_DDOT", value: set.meanMotionDdot, from: -10_000, to: 10_000 },
    { field: "NORAD_CAT_ID", value: set.object, from: 0, to: 999_999_999 },
  ];
  return ranges.flatMap(({ field, value, from, to }) =>
    value >= from && value <= to
      ? []
      : [{ field, reason: message("orbit/out-of-range", { value, from, to }) }],
  );
}
