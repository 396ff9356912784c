import type { Instant } from "../units/index.ts";
import type { InstantSpan } from "./crossings.ts";
import { spansBelow, UndefinedDepthError } from "./crossings.ts";
import type { Orbit } from "./orbit.ts";
import { shadowDepth } from "./shadow.ts";
import { steadySun } from "./sun.ts";

/** Day and night of a vehicle between two instants ([LGT2]). */
export interface LightSpans {
  /** All the time outside the umbra, including the penumbra. */
  readonly daylight: readonly InstantSpan[];
  /**
   * The time when part of the Sun is covered: on both sides of the umbra, or alone where the orbit misses the umbra.
   */
  readonly penumbra: readonly InstantSpan[];
  /** The umbra. */
  readonly darkness: readonly InstantSpan[];
}

/**
 * The number of samples in a revolution of a circular orbit, closer together on an ellipse. An orbit meets the shadow
 * once a revolution.
 */
const LOOKS = 24;

/**
 * The parts of [from, to] that the given spans leave uncovered. The spans must be sorted and separate. Parts shorter
 * than a millisecond are dropped.
 */
export function restOf(spans: readonly InstantSpan[], from: Instant, to: Instant): InstantSpan[] {
  const edges = [from, ...spans.flatMap(({ start, end }) => [start, end]), to];
  const rest: InstantSpan[] = [];
  for (let index = 0; index + 1 < edges.length; index += 2) {
    const [start, end] = [edges[index] ?? from, edges[index + 1] ?? to];
    if (end > start) rest.push({ start, end });
  }
  return rest;
}

/**
 * Day, penumbra and night of an orbit in [from, to]. Returns `null` when the model says that the orbit decays during
 * that time.
 */
export function lightSpansOf(orbit: Orbit, from: Instant, to: Instant): LightSpans | null {
  const sunAt = steadySun();
  const depthAt = (instant: number) => {
    const position = orbit.at(instant as Instant);
    return position && shadowDepth(position, sunAt(instant));
  };
  const stride = orbit.quickPeriod / LOOKS;
  try {
    const darkness = spansBelow((at) => depthAt(at)?.umbra ?? null, from, to, stride);
    const shaded = spansBelow((at) => depthAt(at)?.penumbra ?? null, from, to, stride);
    const penumbra = shaded.flatMap(({ start, end }) =>
      restOf(
        darkness.filter((dark) => dark.end > start && dark.start < end),
        start,
        end,
      ),
    );
    return { daylight: restOf(darkness, from, to), penumbra, darkness };
  } catch (error) {
    if (error instanceof UndefinedDepthError) return null;
    throw error;
  }
}
