/** How long an answer may take, in ms. */
export interface AnswerLimits {
  /** To begin with, and at least ever. */
  readonly first: number;
  /** At most ever. */
  readonly longest: number;
}

/** How many times the last answer the next one may take. */
const MARGIN = 3;

/**
 * How long an answer is waited for. It doubles with each answer that did not come, so that a link with minutes of delay is
 * found out, and comes back towards what answers do take.
 */
export class AnswerTime {
  readonly #limits: AnswerLimits;
  #allowed: number;

  constructor(limits: AnswerLimits) {
    this.#limits = limits;
    this.#allowed = limits.first;
  }

  /** In ms. */
  get allowed(): number {
    return this.#allowed;
  }

  /** An answer did not come within what was allowed. */
  missed(): void {
    this.#allowed = Math.min(this.#limits.longest, this.#allowed * 2);
  }

  /** An answer came after so many ms. */
  met(took: number): void {
    this.#allowed = Math.max(this.#limits.first, Math.min(this.#allowed, MARGIN * took));
  }
}
