import type { Instant } from "../../core/units/index.ts";
import { Listeners } from "../../core/units/index.ts";
import type { PageVisibility } from "./page-visibility.ts";
import type { Clock } from "./system-clock.ts";
import { systemClock } from "./system-clock.ts";

/** A clock that ticks once a second for a screen. */
export interface Seconds {
  /** The moment of the last tick; the same until the next one, so that a screen draws one moment as a whole. */
  readonly now: () => Instant;
  /** Calls back at each tick; ticking stops when nobody watches. Returns a function that ends it. */
  readonly watch: (onTick: () => void) => () => void;
}

/** What a ticking clock may be given. */
export interface SecondsParts {
  readonly clock?: Clock;
  /** Ticks fall on whole seconds from here (PET 0), so that a PET changes on the tick; whole seconds of UTC unless given. */
  readonly from?: Instant;
  /** The document unless given. */
  readonly page?: PageVisibility;
}

const SECOND = 1000;

/** A clock that ticks on full seconds, rests while the page is hidden and ticks at once when it is shown again. */
export function secondsOf({
  clock = systemClock,
  from = 0 as Instant,
  page = document,
}: SecondsParts = {}): Seconds {
  const watchers = new Listeners();
  let last = clock();
  let timer: ReturnType<typeof setTimeout> | undefined;

  const schedule = () => {
    clearTimeout(timer);
    if (page.hidden || watchers.size === 0) return;
    const past = (((clock() - from) % SECOND) + SECOND) % SECOND;
    timer = setTimeout(tick, SECOND - past);
  };
  const tick = () => {
    last = clock();
    watchers.tell();
    schedule();
  };
  const onVisibility = () => (page.hidden ? clearTimeout(timer) : tick());

  return {
    now: () => {
      // Unwatched, nothing keeps it up to date, and nobody counts on it standing still.
      if (watchers.size === 0) last = clock();
      return last;
    },
    watch: (onTick) => {
      if (watchers.size === 0) {
        last = clock();
        page.addEventListener("visibilitychange", onVisibility);
      }
      const unwatch = watchers.add(onTick);
      if (watchers.size === 1) schedule();
      return () => {
        unwatch();
        if (watchers.size > 0) return;
        clearTimeout(timer);
        page.removeEventListener("visibilitychange", onVisibility);
      };
    },
  };
}
