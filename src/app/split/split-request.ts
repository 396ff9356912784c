import type { SplitAnswer } from "../../core/split/index.ts";
import type { Duration } from "../../core/units/index.ts";
import type { FitSubject } from "../fit/index.ts";

/** A question to the worker: a procedure, or what is left of a walk. */
export interface SplitRequest {
  readonly subject: FitSubject;
}

/** What the worker has found so far. */
export interface SplitFound {
  /** `null` when there is no procedure or walk to ask about. */
  readonly answer: SplitAnswer | null;
  /** The PET from which on it holds. */
  readonly now: Duration;
  /** True when it looks no further. */
  readonly isLast: boolean;
}
