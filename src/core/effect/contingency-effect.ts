import { marginOf } from "../course/index.ts";
import { returnPlanAt } from "../plan/index.ts";
import type { Contingency } from "../procedure/index.ts";
import type { Duration, StepId } from "../units/index.ts";
import { later } from "../units/index.ts";
import type { WalkState } from "../walk/index.ts";
import { amendedAt, forecastOf } from "../walk/index.ts";
import { bringChanges } from "./bring-changes.ts";

/** What a contingency would come to if it were brought into a walk at the instant of its state ([OFF4]). Times are PET. */
export interface ContingencyEffect {
  /** The step in hand behind which its tasks would stand. */
  readonly behind: StepId;
  /** When its last step would be complete. */
  readonly ends: Duration;
  /** How long the return would take from there; `null` when that cannot be told. */
  readonly home: Duration | null;
  readonly finish: Duration;
  /** Limit − finish, below zero when over; `null` without a limit. */
  readonly margin: Duration | null;
}

/**
 * Returns what a contingency would come to by the forecast if it were brought in now, behind what its crew has in hand.
 * `null` before the clock is started and once the walk is closed, when the walk could not be forecast with it, and when it
 * has no step that would be performed.
 */
export function contingencyEffect(state: WalkState, contingency: Contingency): ContingencyEffect | null {
  const { ledger, pet, phase } = state;
  if (pet === null || ledger.petZero === null || phase === "closed") return null;
  const at = later(ledger.petZero, pet);
  const bringing = bringChanges(ledger, contingency, at);
  const amended = bringing && amendedAt(ledger, bringing.changes, at);
  const forecast = amended?.ledger && forecastOf(amended.ledger, at);
  if (!bringing || !forecast) return null;
  const finishes = stepsOf(contingency).flatMap(({ id }) => forecast.steps.get(id)?.finish ?? []);
  if (finishes.length === 0) return null;
  const ends = finishes.reduce((most, one) => (one > most ? one : most));
  return {
    behind: bringing.behind,
    ends,
    home: returnPlanAt(forecast, ends)?.total ?? null,
    finish: forecast.finish,
    margin: marginOf(forecast),
  };
}

const stepsOf = ({ tasks }: Contingency) => tasks.flatMap(({ steps }) => steps);
