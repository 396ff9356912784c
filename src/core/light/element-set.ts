import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { Instant } from "../units/index.ts";

/** Mean elements of an orbit for SGP4, as a feed publishes them; angles in degrees. */
export interface ElementSet {
  /** `null` when the set has no name. */
  readonly name: string | null;
  /** Catalogue number. */
  readonly object: number;
  /** International designator, as written; empty when the set has none. */
  readonly designator: string;
  /** Epoch in UTC, cut to the millisecond … */
  readonly epoch: Instant;
  /** … and what was cut off, in ms, 0 to below 1: seven metres of way a millisecond are not to be lost. */
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
  /** The form it was written in. */
  readonly form: "OMM (JSON)" | "OMM (KVN)" | "OMM (XML)" | "TLE";
}

/** Why an orbit file is refused: the field and the reason. */
export interface OrbitProblem {
  /** A keyword as the standard writes it, or what else of the file is meant. */
  readonly field: string | Message;
  readonly reason: Message;
}

/** What reading an orbit file came to. */
export type ReadOrbit =
  | { readonly elements: ElementSet; readonly problems: readonly [] }
  | { readonly elements: null; readonly problems: readonly OrbitProblem[] };

/** An orbit file that is refused. */
export function refusedOrbit(problems: readonly OrbitProblem[]): ReadOrbit {
  return { elements: null, problems };
}

interface Range {
  readonly field: string;
  readonly value: number;
  readonly from: number;
  readonly to: number;
}

/** What is out of the range in which SGP4 makes sense (Hoots & Roehrich 1980, Spacetrack Report 3; common practice for the bounds). */
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
