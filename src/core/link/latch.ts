/** Time and chance as a link gets them from outside. */
export interface LinkTime {
  /** The clock of this device. */
  now(): number;
  /** Uniform in [0, 1). */
  random(): number;
  /** Resolves after so many ms, or at once when the signal is aborted; never rejects. */
  wait(ms: number, signal: AbortSignal): Promise<void>;
}

/** A wait that can be cut short from elsewhere, also just before it begins. */
export class Latch {
  #isRaised = false;
  #release: (() => void) | null = null;

  /** Ends the wait that is under way, or the next one. */
  raise(): void {
    this.#isRaised = true;
    this.#release?.();
  }

  /** Forgets an earlier {@link raise}. */
  lower(): void {
    this.#isRaised = false;
  }

  /**
   * Waits until raised or until the signal is aborted, but for so many ms at most (`null` sets no limit). Resolves with
   * whether the latch was raised, and leaves it lowered.
   */
  async wait(ms: number | null, signal: AbortSignal, time: Pick<LinkTime, "wait">): Promise<boolean> {
    const raised = new AbortController();
    this.#release = () => raised.abort(OVER);
    if (this.#isRaised) raised.abort(OVER);
    const ended = AbortSignal.any([raised.signal, signal]);
    await (ms === null ? aborted(ended) : time.wait(ms, ended));
    this.#release = null;
    const wasRaised = this.#isRaised;
    this.#isRaised = false;
    return wasRaised;
  }
}

/** The abort reason for work nobody needs any more. Without a reason, each abort would create an error with a stack. */
export const OVER = "over";

/** Resolves once a signal is aborted. */
export function aborted(signal: AbortSignal): Promise<void> {
  return new Promise((resolve) => {
    if (signal.aborted) resolve();
    else signal.addEventListener("abort", () => resolve(), { once: true });
  });
}
