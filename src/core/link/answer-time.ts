/** Between which limits the time that is allowed for an answer may lie, in ms. */
export interface AnswerLimits {
  /** What is allowed at first, and never less than that. */
  readonly first: number;
  /** What is allowed at most. */
  readonly longest: number;
}

/** After an answer, the next one is allowed at most this many times what it took, but never less than `first`. */
const MARGIN = 3;

/**
 * The time that is allowed for an answer. It doubles with each answer that does not come, so that even a link with minutes
 * of delay gets its answers, and comes down again towards the time that answers take.
 */
export class AnswerTime {
  readonly #limits: AnswerLimits;
  #allowed: number;

  constructor(limits: AnswerLimits) {
    this.#limits = limits;
    this.#allowed = limits.first;
  }

  /** How long the next answer may take, in ms. */
  get allowed(): number {
    return this.#allowed;
  }

  /** An answer did not come within what was allowed. */
  missed(): void {
    this.#allowed = Math.min(this.#limits.longest, this.#allowed * 2);
  }

  /** Something else of the same other side took so many ms, so that an answer will hardly take less. */
  expect(took: number): void {
    this.#allowed = Math.min(this.#limits.longest, Math.max(this.#allowed, MARGIN * took));
  }

  /** An answer came after so many ms. */
  met(took: number): void {
    this.#allowed = Math.max(this.#limits.first, Math.min(this.#allowed, MARGIN * took));
  }
}
