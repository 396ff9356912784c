import type { AnswerLimits } from "./answer-time.ts";
import type { Backoff } from "./backoff.ts";
import type { BatchLimits } from "./first-batch.ts";

/** How a link behaves; times in ms. */
export interface LinkSettings extends BatchLimits {
  /** Entries taken in at once, at most. */
  readonly intake: number;
  /** A stream on which nothing was heard for so long is given up. */
  readonly silence: number;
  /** How long is waited between attempts. */
  readonly backoff: Backoff;
  /** How long an answer may take. */
  readonly answer: AnswerLimits;
}

/** How a link behaves unless it is told otherwise. */
export const USUAL_SETTINGS: LinkSettings = {
  batch: 500,
  batchLength: 1_000_000,
  intake: 5000,
  silence: 40_000,
  backoff: { first: 1000, longest: 60_000 },
  answer: { first: 15_000, longest: 600_000 },
};
