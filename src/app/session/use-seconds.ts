import { useSyncExternalStore } from "react";
import type { Instant } from "../../core/units/index.ts";
import type { Clock, Seconds } from "../../io/clock/index.ts";

/** The instant of the last tick. The component is drawn again at each tick. */
export function useSeconds(seconds: Seconds): Instant {
  return useSyncExternalStore(seconds.watch, seconds.now);
}

/** How often a clock with a pace of its own is read, in ms. */
const BEAT = 250;

/** Ticks for a clock whose seconds differ from real ones. */
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
