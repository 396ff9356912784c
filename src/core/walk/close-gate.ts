import type { StepId } from "../units/index.ts";
import { progressOf } from "./ledger.ts";
import type { MisplacedItem } from "./misplaced-items.ts";
import { misplacedItems } from "./misplaced-items.ts";
import type { OutsideCrew } from "./outside-crew.ts";
import { outsideOf } from "./outside-crew.ts";
import type { Outstanding } from "./outstanding.ts";
import { outstandingOf } from "./outstanding.ts";
import type { UnsettledState } from "./state-values.ts";
import { unsettledStates } from "./state-values.ts";
import type { WalkState } from "./walk-state.ts";

/** What stands between a walk and a good end, at an instant of the walk ([OFF5]). */
export interface CloseGate {
  /** Who is not known to be at a refuge. While it holds anybody, the walk cannot be called complete. */
  readonly outside: readonly OutsideCrew[];
  readonly items: readonly MisplacedItem[];
  readonly states: readonly UnsettledState[];
  /** The steps that are performed and not complete, in reading order, without get-aheads. */
  readonly undone: readonly StepId[];
  readonly outstanding: readonly Outstanding[];
  /** False while somebody is not known to be at a refuge; the walk may then be terminated or aborted. */
  readonly mayBeComplete: boolean;
}

/** Returns what stands between a walk and a good end at the instant of its state. */
export function closeGateOf(state: Pick<WalkState, "ledger" | "pet">): CloseGate {
  const { ledger } = state;
  const { outline } = ledger.inForce;
  const outside = outsideOf(ledger);
  return {
    outside,
    states: unsettledStates(ledger),
    items: misplacedItems(outline, ledger.custody),
    undone: outline.steps.flatMap(({ index, step, getAhead }) =>
      !getAhead && ledger.network.activity.active[index] && progressOf(ledger, step.id).status === "open"
        ? [step.id]
        : [],
    ),
    outstanding: outstandingOf(state),
    mayBeComplete: outside.length === 0,
  };
}
