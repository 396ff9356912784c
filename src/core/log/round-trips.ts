import type { Duration, Instant } from "../units/index.ts";

/** One question to a clock elsewhere. */
export interface RoundTrip {
  /** When it was sent, by the clock here. */
  readonly sent: Instant;
  /** What the other clock said. */
  readonly said: Instant;
  /** When the answer came, by the clock here. */
  readonly received: Instant;
}

/** How far another clock is ahead of the one here. */
export interface ClockOffset {
  /** To be added to the clock here. */
  readonly offset: Duration;
  /** Half the round trip: the offset is right within plus or minus this. */
  readonly error: Duration;
}

/**
 * The offset by the shortest of several round trips, taken as said half-way (Cristian, "Probabilistic clock
 * synchronization", Distributed Computing 3, 1989, section 3); `null` without any.
 */
export function clockOffset(trips: readonly RoundTrip[]): ClockOffset | null {
  let best: RoundTrip | null = null;
  for (const trip of trips) {
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

/** An offset that changes by more than this is worth an entry, in ms; one below is not corrected. */
export const WORTH_TELLING = 500;
