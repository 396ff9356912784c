import { applyChanges } from "../changes/index.ts";
import { marginOf } from "../course/index.ts";
import { returnPlanAt } from "../plan/index.ts";
import type { Contingency } from "../procedure/index.ts";
import { outlineOf, parseProcedure } from "../procedure/index.ts";
import type { CrewId, Duration, StepId } from "../units/index.ts";
import { later } from "../units/index.ts";
import type { LaidOutProcedure, Ledger, WalkState } from "../walk/index.ts";
import { forecastOf, ledgerWith } from "../walk/index.ts";

/** What a contingency would come to if it were brought into a walk at the instant of its state ([OFF4]). Times are PET. */
export interface ContingencyEffect {
  /** The step behind whose task its tasks would stand. */
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
 * Returns what a contingency would come to by the forecast if it were brought in now, behind the step that the first of
 * its crew has reached. `null` before the clock is started and once the walk is closed, when the walk could not be
 * forecast with it, and when it has no step that would be performed.
 */
export function contingencyEffect(state: WalkState, contingency: Contingency): ContingencyEffect | null {
  const { ledger, pet, phase } = state;
  if (pet === null || ledger.petZero === null || phase === "closed") return null;
  const behind = presentStepOf(state, contingency);
  const inForce = behind && withContingency(ledger.inForce, contingency, behind);
  if (!behind || !inForce) return null;
  const at = later(ledger.petZero, pet);
  const forecast = forecastOf(ledgerWith(ledger, inForce, at), at);
  if (!forecast) return null;
  const finishes = stepsOf(contingency).flatMap(({ id }) => forecast.steps.get(id)?.finish ?? []);
  if (finishes.length === 0) return null;
  const ends = finishes.reduce((most, one) => (one > most ? one : most));
  return {
    behind,
    ends,
    home: returnPlanAt(forecast, ends)?.total ?? null,
    finish: forecast.finish,
    margin: marginOf(forecast),
  };
}

const stepsOf = ({ tasks }: Contingency) => tasks.flatMap(({ steps }) => steps);

/**
 * The step that is first in reading order of those which the crew of a contingency has reached; the last step of the
 * procedure once all of them are finished.
 */
function presentStepOf({ ledger, lanes }: WalkState, contingency: Contingency): StepId | null {
  const { outline } = ledger.inForce;
  const crew = new Set<CrewId>(stepsOf(contingency).flatMap(({ by }) => by));
  const reached = lanes.flatMap(({ crew: one, step }) =>
    crew.has(one) && step !== null ? (outline.step(step) ?? []) : [],
  );
  const first = reached.sort((a, b) => a.index - b.index)[0] ?? outline.steps.at(-1);
  return first?.step.id ?? null;
}

const known = new WeakMap<LaidOutProcedure, Map<string, LaidOutProcedure | null>>();

/** The procedure in force with a contingency brought in; `null` when that is no sound procedure. */
function withContingency(
  inForce: Ledger["inForce"],
  { id }: Contingency,
  behind: StepId,
): LaidOutProcedure | null {
  const key = `${id} ${behind}`;
  const kept = known.get(inForce) ?? new Map<string, LaidOutProcedure | null>();
  known.set(inForce, kept);
  const found = kept.get(key);
  if (found !== undefined) return found;
  const { file } = applyChanges(inForce.file, [{ bring: id, behind }]);
  const { procedure, file: read } = file ? parseProcedure(file) : { procedure: null, file: null };
  const laidOut = procedure && read ? { file: read, outline: outlineOf(procedure) } : null;
  kept.set(key, laidOut);
  return laidOut;
}
