import type { Instant } from "../../core/units/index.ts";

/** A clock for a rehearsal. It has its own pace and can be stopped. */
export class PacedClock {
  #base: Instant;
  #since: Instant;
  #pace: number;
  #running = false;
  readonly #wall: () => Instant;

  /** Makes a clock that is stopped at `from`. */
  constructor(wall: () => Instant, from: Instant, pace: number) {
    this.#wall = wall;
    this.#base = from;
    this.#since = wall();
    this.#pace = pace;
  }

  /** The present time of the rehearsal. */
  now(): Instant {
    return this.#running
      ? (Math.round(this.#base + (this.#wall() - this.#since) * this.#pace) as Instant)
      : this.#base;
  }

  get running(): boolean {
    return this.#running;
  }

  get pace(): number {
    return this.#pace;
  }

  /** Starts or stops the clock at the time it shows. */
  run(running: boolean): void {
    this.#rebase();
    this.#running = running;
  }

  /** Sets the pace in seconds of rehearsal per second. */
  setPace(pace: number): void {
    this.#rebase();
    this.#pace = pace;
  }

  /** Puts the clock on to a time that it has not reached; it never goes back. */
  catchUp(to: Instant): void {
    this.#rebase();
    if (this.#base < to) this.#base = to;
  }

  #rebase(): void {
    this.#base = this.now();
    this.#since = this.#wall();
  }
}
