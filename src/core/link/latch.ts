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

  /** Ends the wait there is, or the next one. */
  raise(): void {
    this.#isRaised = true;
    this.#release?.();
  }

  /** Forgets an earlier {@link raise}. */
  lower(): void {
    this.#isRaised = false;
  }

  /** Waits for so many ms, `null` without an end, or until raised or aborted; true when it was raised. Leaves it lowered. */
  async wait(ms: number | null, signal: AbortSignal, time: Pick<LinkTime, "wait">): Promise<boolean> {
    const over = new AbortController();
    const release = () => over.abort(OVER);
    this.#release = release;
    signal.addEventListener("abort", release, { once: true });
    if (this.#isRaised || signal.aborted) release();
    await (ms === null ? aborted(over.signal) : time.wait(ms, over.signal));
    signal.removeEventListener("abort", release);
    this.#release = null;
    const wasRaised = this.#isRaised;
    this.#isRaised = false;
    return wasRaised;
  }
}

/** Why something was aborted that nobody needs any more; without a reason given, each abort makes an error with a stack. */
export const OVER = "over";

/** Resolves once a signal is aborted. */
export function aborted(signal: AbortSignal): Promise<void> {
  return new Promise((resolve) => {
    if (signal.aborted) resolve();
    else signal.addEventListener("abort", () => resolve(), { once: true });
  });
}
