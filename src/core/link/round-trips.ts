import type { ClockOffset } from "../log/index.ts";
import type { Duration, Instant } from "../units/index.ts";

/** One question to a clock elsewhere and its answer. */
export interface RoundTrip {
  /** When the question was sent, by the clock here. */
  readonly sent: Instant;
  /** What the other clock showed. */
  readonly said: Instant;
  /** When the answer came, by the clock here. */
  readonly received: Instant;
}

/**
 * The offset of the other clock, from the shortest of several round trips; its answer is taken as given half-way through
 * the trip, so that half the trip is the error (Cristian, "Probabilistic clock synchronization", Distributed Computing 3,
 * 1989, section 3). `null` when no trip can be used.
 */
export function clockOffsetOf(trips: readonly RoundTrip[]): ClockOffset | null {
  let best: RoundTrip | null = null;
  for (const trip of trips) {
    // The clock here was set back during the round trip.
    if (trip.received < trip.sent) continue;
    if (best === null || trip.received - trip.sent < best.received - best.sent) best = trip;
  }
  if (best === null) return null;
  const half = (best.received - best.sent) / 2;
  return {
    offset: Math.round(best.said - (best.sent + half)) as Duration,
    error: Math.ceil(half) as Duration,
  };
}
