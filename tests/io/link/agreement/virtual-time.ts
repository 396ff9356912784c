import TinyQueue from "tinyqueue";
import type { LinkTime } from "../../../../src/core/link/index.ts";
import type { Instant } from "../../../../src/core/units/index.ts";

interface Timer {
  readonly at: number;
  readonly number: number;
  readonly fire: () => void;
  /** Whether nobody waits for it any more. */
  readonly isDead: () => boolean;
}

/** Waits end on multiples of this, in ms, so that many end together. */
const GRAIN = 50;

/** Time that passes only when it is let, and chance that can be repeated. */
export class VirtualTime {
  now: number;
  readonly random: () => number;
  readonly #timers = new TinyQueue<Timer>([], (a, b) => a.at - b.at || a.number - b.number);
  #made = 0;

  constructor(start: Instant, random: () => number) {
    this.now = start;
    this.random = random;
  }

  /** Time as a device knows it whose clock is `skew()` ahead. */
  of(skew: () => number): LinkTime & { readonly now: () => Instant } {
    return { now: () => (this.now + skew()) as Instant, random: this.random, wait: this.wait };
  }

  readonly wait = (ms: number, signal: AbortSignal): Promise<void> =>
    new Promise((resolve) => {
      if (signal.aborted) return resolve();
      let isOver = false;
      const end = () => {
        isOver = true;
        resolve();
      };
      signal.addEventListener("abort", end, { once: true });
      this.#after(
        ms,
        () => {
          signal.removeEventListener("abort", end);
          resolve();
        },
        () => isOver,
      );
    });

  after(ms: number, fire: () => void): void {
    this.#after(ms, fire, () => false);
  }

  /** Lets so much time pass. */
  async pass(ms: number): Promise<void> {
    const end = this.now + ms;
    await turn();
    for (;;) {
      const next = this.#timers.peek();
      if (!next || next.at > end) break;
      let hasFired = false;
      while (this.#timers.peek()?.at === next.at) hasFired = this.#fire() || hasFired;
      if (hasFired) await turn();
    }
    this.now = Math.max(this.now, end);
  }

  #fire(): boolean {
    const timer = this.#timers.pop();
    if (!timer || timer.isDead()) return false;
    this.now = Math.max(this.now, timer.at);
    timer.fire();
    return true;
  }

  #after(ms: number, fire: () => void, isDead: () => boolean): void {
    const at = Math.ceil((this.now + ms) / GRAIN) * GRAIN;
    this.#timers.push({ at, number: this.#made++, fire, isDead });
  }
}

/** Lets everything be done that waits for no time to pass. */
function turn(): Promise<void> {
  return new Promise((resolve) => setImmediate(resolve));
}
