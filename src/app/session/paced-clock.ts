import type { Instant } from "../../core/units/index.ts";

/** A clock for a rehearsal: it runs at a pace of its own and can be stopped. */
export class PacedClock {
  #base: Instant;
  #since: Instant;
  #pace: number;
  #running = false;
  readonly #wall: () => Instant;

  /** Starts out stopped at `from`. */
  constructor(wall: () => Instant, from: Instant, pace: number) {
    this.#wall = wall;
    this.#base = from;
    this.#since = wall();
    this.#pace = pace;
  }

  /** The rehearsal's time. */
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

  /** Runs on, or stops, at the time it shows. */
  run(running: boolean): void {
    this.#rebase();
    this.#running = running;
  }

  /** Seconds of rehearsal per second from now on. */
  setPace(pace: number): void {
    this.#rebase();
    this.#pace = pace;
  }

  #rebase(): void {
    this.#base = this.now();
    this.#since = this.#wall();
  }
}
