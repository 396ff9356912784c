import type { LinkTime } from "../../core/link/index.ts";

/** Waits and requests that end together. */
export class Scope {
  readonly #time: LinkTime;
  readonly #open = new Set<AbortController>();
  #isOver = false;

  constructor(time: LinkTime) {
    this.#time = time;
  }

  get isOver(): boolean {
    return this.#isOver;
  }

  /** Ends everything, now and from now on. */
  end(): void {
    this.#isOver = true;
    for (const controller of this.#open) controller.abort();
  }

  /** Does something that can be ended, by whoever has the controller too. */
  async within<T>(work: (controller: AbortController) => Promise<T>): Promise<T> {
    const controller = new AbortController();
    this.#open.add(controller);
    if (this.#isOver) controller.abort();
    try {
      return await work(controller);
    } finally {
      this.#open.delete(controller);
    }
  }

  /** Calls back after so many ms unless this ends before; returns how not to. */
  readonly later = (ms: number, work: () => void): (() => void) => {
    let cancel: () => void = () => {};
    void this.within(async (controller) => {
      cancel = () => controller.abort();
      await this.#time.wait(ms, controller.signal);
      if (!controller.signal.aborted) work();
    });
    return cancel;
  };
}
