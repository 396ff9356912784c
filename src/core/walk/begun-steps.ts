import type { Instant, StepId } from "../units/index.ts";
import type { Ledger } from "./ledger.ts";
import { progressOf } from "./ledger.ts";
import { inWork } from "./walk-course.ts";

/** The steps that an amendment must leave where they are ([AMD1]). */
export interface BegunSteps {
  readonly complete: ReadonlySet<StepId>;
  /** The steps in work, with their starts. */
  readonly working: ReadonlyMap<StepId, Instant>;
}

/**
 * Returns the steps that are complete or in work at an instant. A step of a get-ahead that has come up, and of which
 * nobody said that it was begun, is not in work here: it may still be left out.
 */
export function begunSteps(ledger: Ledger, at: Instant): BegunSteps {
  const complete = new Set<StepId>();
  const working = new Map<StepId, Instant>();
  for (const [step, start] of inWork(ledger, at)) {
    const isOnlyUp =
      ledger.inForce.outline.step(step)?.getAhead && progressOf(ledger, step).saidStart === null;
    if (!isOnlyUp) working.set(step, start);
  }
  for (const { step } of ledger.inForce.outline.steps) {
    const { status, saidStart } = progressOf(ledger, step.id);
    if (status !== "open") complete.add(step.id);
    // A step that was reopened while an earlier one is open again has begun all the same.
    else if (saidStart !== null && !working.has(step.id)) working.set(step.id, saidStart);
  }
  return { complete, working };
}

/** True when an entry other than a note says something of a step that is open, which would be lost with it. */
export function isSpokenOf(ledger: Ledger, step: StepId): boolean {
  const { records, counted, confirmed, reopened } = progressOf(ledger, step);
  const decision = ledger.inForce.outline.step(step)?.step.decide;
  return (
    records.length + counted.length + reopened.length > 0 ||
    confirmed !== null ||
    (decision !== undefined && ledger.outcomes.has(decision.id))
  );
}
