import { group } from "d3-array";
import type { OutlineStep } from "../../core/procedure/index.ts";
import type { Duration, StepId } from "../../core/units/index.ts";
import { between } from "../../core/units/index.ts";
import type { Outstanding, StepProgress, WalkState } from "../../core/walk/index.ts";
import { outstandingOf, progressOf } from "../../core/walk/index.ts";

/** How a step stands in mid-walk, for the paper procedure ([REV5]). */
export interface StepStanding {
  readonly ending: "done" | "skipped" | "open" | "not-performed";
  /** When it was done or skipped, in PET; `null` otherwise. */
  readonly at: Duration | null;
  readonly progress: StepProgress;
  /** The outcome of the decision that it makes; `null` while that is open, or without one. */
  readonly outcome: string | null;
  readonly outstanding: readonly Outstanding[];
}

/** Returns how each step of the procedure in force stands at the instant of a state. */
export function stepStandings(state: WalkState): ReadonlyMap<StepId, StepStanding> {
  const { ledger } = state;
  const owed = group(outstandingOf(state), ({ step }) => step);
  const petZero = ledger.petZero ?? ledger.opened.at;
  const standing = ({ index, step }: OutlineStep): StepStanding => {
    const progress = progressOf(ledger, step.id);
    const isLeft = progress.status === "open" && !ledger.network.activity.active[index];
    return {
      ending: isLeft ? "not-performed" : progress.status,
      at: progress.finish === null ? null : between(petZero, progress.finish),
      progress,
      outcome: step.decide ? (ledger.outcomes.get(step.decide.id) ?? null) : null,
      outstanding: owed.get(step.id) ?? [],
    };
  };
  return new Map(ledger.inForce.outline.steps.map((entry) => [entry.step.id, standing(entry)]));
}
