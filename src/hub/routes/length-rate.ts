import type { Instant } from "../../core/units/index.ts";

const MINUTE = 60_000;

/** How many bytes each token has sent within the minute. */
export class LengthRate {
  readonly #most: number;
  #since = 0;
  #sent = new Map<string, number>();

  /** `most` bytes a minute and token. */
  constructor(most: number) {
    this.#most = most;
  }

  /** Counts a body; returns after how many seconds it may be sent again when it is one too much, else `null`. */
  waitAfter(token: string, bytes: number, now: Instant): number | null {
    // Also when the clock was set back.
    if (Math.abs(now - this.#since) >= MINUTE) [this.#since, this.#sent] = [now, new Map()];
    const sent = this.#sent.get(token) ?? 0;
    // The first one always goes: however large it may be, another minute would not help.
    if (sent > 0 && sent + bytes > this.#most)
      return Math.max(1, Math.ceil((this.#since + MINUTE - now) / 1000));
    this.#sent.set(token, sent + bytes);
    return null;
  }
}
