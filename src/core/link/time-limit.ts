import type { LinkTime } from "./latch.ts";
import { OVER } from "./latch.ts";

/** A limit to how long something may take. */
export interface TimeLimit {
  /** Is aborted once the time is over, the limit was ended, or the given signal is aborted. */
  readonly signal: AbortSignal;
  /** Whether it was the time that was over first. */
  isLate(): boolean;
  /** Ends what was limited, or is called when it is done: then nothing is waited for any more. */
  end(): void;
}

/**
 * Limits something to so many ms, and to a given signal where there is one. This is the platform's `AbortSignal.timeout`
 * on a time that is passed in.
 */
export function timeLimit(
  ms: number,
  { wait }: Pick<LinkTime, "wait">,
  given: AbortSignal | null = null,
): TimeLimit {
  const own = new AbortController();
  const signal = given ? AbortSignal.any([own.signal, given]) : own.signal;
  let isLate = false;
  void wait(ms, signal).then(() => {
    if (signal.aborted) return;
    isLate = true;
    own.abort(OVER);
  });
  return { signal, isLate: () => isLate, end: () => own.abort(OVER) };
}
