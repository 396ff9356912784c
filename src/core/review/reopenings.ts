import type { Instant, StepId } from "../units/index.ts";
import type { Ledger } from "../walk/index.ts";

/** A reopening of a step that was complete, or of the walk after it was closed. */
export interface ReopeningReview {
  readonly at: Instant;
  /** The step; `null` for the walk as a whole. */
  readonly step: StepId | null;
  /** The reason as somebody wrote it; empty when nobody did. */
  readonly reason: string;
}

/** Returns every reopening of a step and of the walk, in order of time. */
export function reopeningsOf(ledger: Ledger): readonly ReopeningReview[] {
  const ofSteps = [...ledger.steps].flatMap(([step, { reopened }]) =>
    reopened.map(({ at, reason }) => ({ at, step, reason })),
  );
  const ofWalk = ledger.reopenings.map(({ at, reason }) => ({ at, step: null, reason }));
  return [...ofSteps, ...ofWalk].sort((a, b) => a.at - b.at);
}
