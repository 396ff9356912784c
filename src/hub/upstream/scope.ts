import type { AnswerTime, LinkTime } from "../../core/link/index.ts";
import { timeLimit } from "../../core/link/index.ts";

/** Waits and requests that end together. */
export class Scope {
  readonly #time: LinkTime;
  readonly #over = new AbortController();

  constructor(time: LinkTime) {
    this.#time = time;
  }

  /** Is aborted when everything ends. */
  get signal(): AbortSignal {
    return this.#over.signal;
  }

  /** Ends everything that is under way, and everything that begins afterwards. */
  end(): void {
    this.#over.abort();
  }

  /** Calls back after so many ms unless everything ends before; returns a function that cancels the call. */
  readonly later = (ms: number, work: () => void): (() => void) => {
    const cancelled = new AbortController();
    const signal = AbortSignal.any([cancelled.signal, this.#over.signal]);
    void this.#time.wait(ms, signal).then(() => {
      if (!signal.aborted) work();
    });
    return () => cancelled.abort();
  };

  /** Asks for something within the time that answers take, and learns from how long this answer took. */
  async ask<Answer>(answerTime: AnswerTime, work: (signal: AbortSignal) => Promise<Answer>): Promise<Answer> {
    const since = this.#time.now();
    const limit = timeLimit(answerTime.allowed, this.#time, this.#over.signal);
    try {
      const answer = await work(limit.signal);
      answerTime.met(Math.max(0, this.#time.now() - since));
      return answer;
    } catch (cause) {
      if (limit.isLate()) answerTime.missed();
      throw cause;
    } finally {
      limit.end();
    }
  }
}
