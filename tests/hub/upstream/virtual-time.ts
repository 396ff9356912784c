import { setTimeout as realWait } from "node:timers/promises";
import type { LinkTime } from "../../../src/core/link/index.ts";

/** Time that goes on only when it is told to. */
export class VirtualTime implements LinkTime {
  #now: number;
  readonly #waits = new Set<{ readonly until: number; readonly end: () => void }>();

  constructor(now: number) {
    this.#now = now;
  }

  now = (): number => this.#now;
  random = (): number => 0.5;
  wait = (ms: number, signal: AbortSignal): Promise<void> =>
    new Promise((resolve) => {
      const wait = {
        until: this.#now + ms,
        end: () => {
          this.#waits.delete(wait);
          signal.removeEventListener("abort", wait.end);
          resolve();
        },
      };
      this.#waits.add(wait);
      signal.addEventListener("abort", wait.end, { once: true });
      if (signal.aborted) wait.end();
    });

  /** Goes on in steps, at each of which real answers have a moment (in ms) to come, until something holds; the time it took, in ms. */
  async until(
    isSo: () => boolean | Promise<boolean>,
    { step, most, moment = () => 4 }: { step: number; most: number; moment?: () => number },
  ): Promise<number> {
    const began = this.#now;
    while (!(await isSo())) {
      if (this.#now - began > most) throw new Error(`not so after ${most / 1000} s of virtual time`);
      this.#now += step;
      const due = [...this.#waits].filter(({ until }) => until <= this.#now);
      for (const { end } of due.sort((a, b) => a.until - b.until)) end();
      await realWait(moment());
    }
    return this.#now - began;
  }
}
