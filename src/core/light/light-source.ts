import type { Duration, Instant } from "../units/index.ts";
import { later } from "../units/index.ts";
import type { Site } from "./contact.ts";
import { contactSpansOf, mergedSpans } from "./contact.ts";
import type { InstantSpan } from "./crossings.ts";
import type { ElementSet } from "./element-set.ts";
import type { LightSpans } from "./light-spans.ts";
import { lightSpansOf, restOf } from "./light-spans.ts";
import { AGE_LIMIT, ageOf, orbitOf } from "./orbit.ts";
import { sunUpSpansOf } from "./surface-light.ts";

/**
 * The source of day and night: a vehicle's orbit, or the horizon of a site on the surface. With an orbit, `sites` are
 * the ground sites that have contact with the vehicle ([LGT3]).
 */
export type LightSource =
  | { readonly kind: "orbit"; readonly elements: ElementSet; readonly sites?: readonly Site[] }
  | { readonly kind: "site"; readonly site: Site };

/** Day and night from an instant on, with how far they can be trusted. */
export interface Light {
  readonly source: LightSource;
  readonly from: Instant;
  readonly to: Instant;
  /** `null` when the model says that the orbit decays during the requested time. */
  readonly spans: LightSpans | null;
  /** The passes over the ground sites, joined; `null` without sites, or when the orbit decays. */
  readonly contact: readonly InstantSpan[] | null;
  /** The age of the element set at `from`, below zero before its epoch; `null` for a site. */
  readonly age: Duration | null;
  /** True when the epoch is more than fourteen days away, before or after ([LGT4]). */
  readonly isOld: boolean;
}

/** Day and night from a source, from an instant on and for the given length. */
export function lightFor(source: LightSource, from: Instant, length: Duration): Light {
  const to = later(from, length);
  if (source.kind === "site") {
    const daylight = sunUpSpansOf(source.site, from, to);
    const spans = { daylight, penumbra: [], darkness: restOf(daylight, from, to) };
    return { source, from, to, spans, contact: null, age: null, isOld: false };
  }
  const age = ageOf(source.elements, from);
  const furthest = Math.max(Math.abs(age), Math.abs(ageOf(source.elements, to)));
  const orbit = orbitOf(source.elements);
  const passes = (source.sites ?? []).map((site) => contactSpansOf(orbit, site, from, to));
  const isKnown = passes.length > 0 && !passes.includes(null);
  return {
    source,
    from,
    to,
    spans: lightSpansOf(orbit, from, to),
    contact: isKnown ? mergedSpans(passes.flatMap((spans) => spans ?? [])) : null,
    age,
    isOld: furthest > AGE_LIMIT,
  };
}
