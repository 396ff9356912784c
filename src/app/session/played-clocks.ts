import type { Instant, WalkId } from "../../core/units/index.ts";

/** The clocks of the rehearsals that are open on this page. */
const clocks = new Map<WalkId, () => Instant>();

/** Lets the other screens of this page read the clock of a rehearsal; returns a function that ends that. */
export function sharePlayedClock(walk: WalkId, clock: () => Instant): () => void {
  clocks.set(walk, clock);
  return () => {
    if (clocks.get(walk) === clock) clocks.delete(walk);
  };
}

/**
 * The present time of a rehearsal: by its own clock where it is open on this page, which goes on between two entries, and never
 * before `lastAt`, the time of its last entry, by which all others go.
 */
export function playedNow(walk: WalkId, lastAt: Instant): Instant {
  const now = clocks.get(walk)?.();
  return now !== undefined && now > lastAt ? now : lastAt;
}
