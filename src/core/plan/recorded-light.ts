import type { Light } from "../light/index.ts";
import { lightFor, readOrbit } from "../light/index.ts";
import type { Instant } from "../units/index.ts";
import { HORIZON } from "../window/index.ts";

/** Where day and night come from, as it is kept with a walk: the text of an orbit file, or a site on the surface in degrees and metres. */
export type RecordedLight =
  | { readonly orbit: string }
  | { readonly site: { readonly latitude: number; readonly longitude: number; readonly height: number } };

/** So many starts are kept for one source. */
const MOST_KEPT = 64;

const known = new WeakMap<RecordedLight, Map<Instant, Light | null>>();

/** Day and night from a start on, by what was kept; `null` when the orbit file is refused. Kept per record and start. */
export function lightFrom(record: RecordedLight, start: Instant): Light | null {
  const kept = known.get(record) ?? new Map<Instant, Light | null>();
  known.set(record, kept);
  const found = kept.get(start);
  if (found !== undefined) return found;
  const light = worked(record, start);
  // Whoever drags a start through a day leaves a thousand behind.
  if (kept.size >= MOST_KEPT) kept.clear();
  kept.set(start, light);
  return light;
}

function worked(record: RecordedLight, start: Instant): Light | null {
  if ("site" in record) return lightFor({ kind: "site", site: { ...record.site, mask: 0 } }, start, HORIZON);
  const { elements } = readOrbit(record.orbit);
  return elements && lightFor({ kind: "orbit", elements }, start, HORIZON);
}
