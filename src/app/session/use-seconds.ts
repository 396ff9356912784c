import { useSyncExternalStore } from "react";
import type { Instant } from "../../core/units/index.ts";
import type { Clock, Seconds } from "../../io/clock/index.ts";

/** The moment of the last tick; the component draws again at each. */
export function useSeconds(seconds: Seconds): Instant {
  return useSyncExternalStore(seconds.watch, seconds.now);
}

/** How often a clock that runs at a pace of its own is looked at, in ms. */
const BEAT = 250;

/** Ticks for a clock whose seconds are not those of the wall. */
export function beatsOf(clock: Clock): Seconds {
  let last = clock();
  return {
    now: () => last,
    watch: (onTick) => {
      const beat = () => {
        last = clock();
        onTick();
      };
      const timer = setInterval(beat, BEAT);
      return () => clearInterval(timer);
    },
  };
}
