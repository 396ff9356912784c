import type { Instant } from "../units/index.ts";
import type { InstantSpan } from "./crossings.ts";
import { spansBelow, UndefinedDepthError } from "./crossings.ts";
import type { Orbit, Vector } from "./orbit.ts";
import { siderealTime } from "./orbit.ts";

/** A ground site. Degrees, with north and east positive; metres above the WGS 84 ellipsoid. */
export interface Site {
  readonly latitude: number;
  readonly longitude: number;
  readonly height: number;
  /** The elevation above which there is contact, in degrees. */
  readonly mask: number;
}

const RADIANS = Math.PI / 180;
/** The equatorial radius of WGS 84, in km. */
const EQUATOR = 6378.137;
const FLATTENING = 1 / 298.257223563;

/** The number of samples in a revolution. A site sees a low orbit for a tenth of one. */
const LOOKS = 48;

interface Horizon {
  readonly position: Vector;
  readonly up: Vector;
}

/** A site's position and vertical in the Earth-fixed frame, in km (Vallado 2013, algorithm 51). */
function horizonOf({ latitude, longitude, height }: Site): Horizon {
  const [lat, lon] = [latitude * RADIANS, longitude * RADIANS];
  const squared = FLATTENING * (2 - FLATTENING);
  const curve = EQUATOR / Math.sqrt(1 - squared * Math.sin(lat) ** 2);
  const [up, across] = [height / 1000, Math.cos(lat)];
  return {
    position: {
      x: (curve + up) * across * Math.cos(lon),
      y: (curve + up) * across * Math.sin(lon),
      z: (curve * (1 - squared) + up) * Math.sin(lat),
    },
    up: { x: across * Math.cos(lon), y: across * Math.sin(lon), z: Math.sin(lat) },
  };
}

/** The elevation of a position in TEME above a site's horizon, in degrees, without refraction. */
export function elevationOf(site: Site, position: Vector, instant: Instant): number {
  return elevation(horizonOf(site), position, instant);
}

function elevation({ position: site, up }: Horizon, { x, y, z }: Vector, instant: number): number {
  const angle = siderealTime(instant as Instant);
  const [cosine, sine] = [Math.cos(angle), Math.sin(angle)];
  const to = { x: cosine * x + sine * y - site.x, y: cosine * y - sine * x - site.y, z: z - site.z };
  const sineOf = (to.x * up.x + to.y * up.y + to.z * up.z) / Math.hypot(to.x, to.y, to.z);
  return Math.asin(Math.min(1, Math.max(-1, sineOf))) / RADIANS;
}

/**
 * The spans in [from, to] during which an orbit is above a site's mask ([LGT3]). Returns `null` when the orbit decays
 * during that time.
 */
export function contactSpansOf(orbit: Orbit, site: Site, from: Instant, to: Instant): InstantSpan[] | null {
  const horizon = horizonOf(site);
  try {
    return spansBelow(
      (at) => {
        const position = orbit.at(at as Instant);
        return position && site.mask - elevation(horizon, position, at);
      },
      from,
      to,
      orbit.quickPeriod / LOOKS,
    );
  } catch (error) {
    if (error instanceof UndefinedDepthError) return null;
    throw error;
  }
}

/** Merges overlapping and touching spans. The result is sorted. */
export function mergedSpans(spans: readonly InstantSpan[]): InstantSpan[] {
  const merged: InstantSpan[] = [];
  for (const span of spans.toSorted((a, b) => a.start - b.start)) {
    const last = merged.at(-1);
    if (last && span.start <= last.end) {
      if (span.end > last.end) merged[merged.length - 1] = { start: last.start, end: span.end };
    } else merged.push(span);
  }
  return merged;
}

/**
 * Reads a site as written on a command line, `lat,lon,alt_m[,mask_deg]`. The mask is 0° when it is left out. Returns
 * `null` when the text is not a site.
 */
export function parseSite(text: string): Site | null {
  const parts = text.split(",").map((part) => (part.trim() === "" ? Number.NaN : Number(part)));
  const [latitude, longitude, height, mask = 0] = parts;
  if (latitude === undefined || longitude === undefined || height === undefined || parts.length > 4)
    return null;
  const isSound =
    parts.every(Number.isFinite) &&
    Math.abs(latitude) <= 90 &&
    Math.abs(longitude) <= 360 &&
    height >= -500 &&
    height <= 10_000 &&
    mask >= -10 &&
    mask < 90;
  return isSound ? { latitude, longitude, height, mask } : null;
}
