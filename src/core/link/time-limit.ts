import type { LinkTime } from "./latch.ts";
import { OVER } from "./latch.ts";

/** A limit to how long something may take. */
export interface TimeLimit {
  /** Is aborted when the time is over, or when the signal that was given is. */
  readonly signal: AbortSignal;
  /** Whether it was the time that was over. */
  isOver(): boolean;
  /** Ends the limit: what was limited is done, and the signal is not aborted for lateness any more. */
  cancel(): void;
}

/** Sets a limit of so many ms, and the limits that a given signal sets. The platform's `AbortSignal.timeout` on a time that is passed in. */
export function timeLimit(
  ms: number,
  { wait }: Pick<LinkTime, "wait">,
  given: AbortSignal = new AbortController().signal,
): TimeLimit {
  const late = new AbortController();
  const done = new AbortController();
  const ended = AbortSignal.any([done.signal, given]);
  void wait(ms, ended).then(() => {
    if (!ended.aborted) late.abort(OVER);
  });
  return {
    signal: AbortSignal.any([late.signal, given]),
    isOver: () => late.signal.aborted,
    cancel: () => done.abort(OVER),
  };
}
