import type { Duration, Instant } from "../../core/units/index.ts";
import { between } from "../../core/units/index.ts";
import type { PageVisibility } from "./page-visibility.ts";
import type { Clock } from "./system-clock.ts";
import { systemClock } from "./system-clock.ts";

/** The device's clock went otherwise than time did. */
export interface ClockJump {
  /** The clock right after the jump was noticed. */
  readonly at: Instant;
  /** How far it is ahead of where it should be; below zero when it was set back. */
  readonly by: Duration;
  /** True when the device may just have slept: on some, the steady clock stands still meanwhile. */
  readonly mayBeSleep: boolean;
}

/** What watching for jumps may be given. */
export interface ClockJumpParts {
  readonly clock?: Clock;
  /** Milliseconds of a clock that is never set; `performance.now()` unless given. */
  readonly steady?: () => number;
  /** The document unless given. */
  readonly page?: PageVisibility;
  /** From one look to the next, in ms; 1 s unless given. */
  readonly every?: number;
}

/** A jump of more than this is told, in ms. */
const TOLERATED = 500;

/** Calls back when the wall clock has moved against the steady clock by more than 0.5 s since the last jump; returns a function that ends it. */
export function watchClockJumps(onJump: (jump: ClockJump) => void, parts: ClockJumpParts = {}): () => void {
  const { clock = systemClock, steady = () => performance.now(), page = document, every = 1000 } = parts;
  let [wall, ticks] = [clock(), steady()];
  let wasHidden = page.hidden;

  const look = () => {
    const at = clock();
    const by = Math.round(between(wall, at) - (steady() - ticks)) as Duration;
    if (Math.abs(by) > TOLERATED) {
      onJump({ at, by, mayBeSleep: by > 0 && wasHidden });
      [wall, ticks] = [at, steady()];
    }
    wasHidden = page.hidden;
  };
  const onVisibility = () => {
    if (page.hidden) wasHidden = true;
    else look();
  };
  page.addEventListener("visibilitychange", onVisibility);
  const timer = setInterval(look, every);
  return () => {
    clearInterval(timer);
    page.removeEventListener("visibilitychange", onVisibility);
  };
}
