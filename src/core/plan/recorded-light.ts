import type { Light, LightSource, Site } from "../light/index.ts";
import { lightFor, readOrbit } from "../light/index.ts";
import type { Instant } from "../units/index.ts";
import { HORIZON } from "../window/index.ts";

/**
 * The source of day and night that is stored with a walk: the text of an orbit file, or a site on the surface
 * (latitude and longitude in degrees, height in metres). With an orbit, `sites` are the ground sites for contact.
 */
export type RecordedLight =
  | { readonly orbit: string; readonly sites?: readonly Site[] | undefined }
  | { readonly site: { readonly latitude: number; readonly longitude: number; readonly height: number } };

/** How many starts are cached for one source. */
const MOST_KEPT = 64;

const known = new WeakMap<RecordedLight, Map<Instant, Light | null>>();

/**
 * Returns day and night from a start on, or `null` when the orbit file is invalid. Results are cached per record and
 * start.
 */
export function lightFrom(record: RecordedLight, start: Instant): Light | null {
  const kept = known.get(record) ?? new Map<Instant, Light | null>();
  known.set(record, kept);
  const found = kept.get(start);
  if (found !== undefined) return found;
  const light = worked(record, start);
  // Dragging a start through a day asks for about a thousand starts, so the cache must be limited.
  if (kept.size >= MOST_KEPT) kept.clear();
  kept.set(start, light);
  return light;
}

function worked(record: RecordedLight, start: Instant): Light | null {
  const source = lightSourceOf(record);
  return source && lightFor(source, start, HORIZON);
}

/** The source of light of a record, as it is read; `null` when the orbit file is invalid. */
export function lightSourceOf(record: RecordedLight): LightSource | null {
  if ("site" in record) return { kind: "site", site: { ...record.site, mask: 0 } };
  const { elements } = readOrbit(record.orbit);
  return elements && { kind: "orbit", elements, ...(record.sites ? { sites: record.sites } : {}) };
}
