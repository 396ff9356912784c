import { range } from "d3-array";
import type { CSSProperties, ReactNode } from "react";
import type { Duration } from "../../core/units/index.ts";
import { hourMinuteText } from "../../core/units/index.ts";

const HOUR = 3_600_000;
const STEPS = [HOUR / 12, HOUR / 4, HOUR / 2, HOUR, 2 * HOUR, 4 * HOUR];
const MOST_TICKS = 8;

/** The times to mark on a track that ends at `end`: at most eight, at round intervals. */
export function trackTicks(end: Duration): Duration[] {
  const step = STEPS.find((one) => end / one <= MOST_TICKS) ?? end;
  return range(0, end, step) as Duration[];
}

/** CSS `left` and `width` that place something on a track from one PET to another. */
export function onTrack(from: number, to: number, end: Duration): CSSProperties {
  const share = (pet: number) => `${Math.round((pet / end) * 10_000) / 100}%`;
  return { left: share(from), width: `max(2px, ${share(to - from)})` };
}

/**
 * A strip of time from PET 0 to `end` that holds bars. Screen readers skip it, since the words beside it say the same.
 */
export function PetTrack({ end, children }: { readonly end: Duration; readonly children: ReactNode }) {
  return (
    <div className="review-track" aria-hidden="true">
      {trackTicks(end).map((pet) => (
        <i key={pet} className="review-tick" style={{ left: onTrack(pet, pet, end).left }} />
      ))}
      {children}
    </div>
  );
}

/** The scale of hours below the tracks. */
export function PetScale({ end }: { readonly end: Duration }) {
  return (
    <div className="review-scale" aria-hidden="true">
      {trackTicks(end).map((pet) => (
        <span key={pet} style={{ left: onTrack(pet, pet, end).left }}>
          {hourMinuteText(pet)}
        </span>
      ))}
    </div>
  );
}
