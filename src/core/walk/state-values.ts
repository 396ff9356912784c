import type { State } from "../procedure/index.ts";
import type { Instant, StateId } from "../units/index.ts";
import type { Ledger } from "./ledger.ts";
import { progressOf } from "./ledger.ts";

/** A state that does not have the value that it must have at the end of the walk. */
export interface UnsettledState {
  readonly state: State;
  readonly is: string;
  readonly mustBe: string;
}

/** A value that a state was given, and when. */
interface Given {
  readonly at: Instant;
  readonly state: StateId;
  readonly value: string;
}

/**
 * Returns what states were given by the steps that were done and by entries of their own (`state.set`), in the order of
 * their times. Of two at one time the step in reading order comes first, and what was entered by itself last. A reopened
 * step gives nothing.
 */
export function statesGivenIn(ledger: Ledger): readonly Given[] {
  const { outline } = ledger.inForce;
  if (outline.procedure.states.length === 0) return [];
  const given: Given[] = [];
  for (const { step } of outline.steps) {
    const { status, finish } = progressOf(ledger, step.id);
    if (status !== "done" || finish === null) continue;
    for (const [state, value] of Object.entries(step.sets ?? {}))
      given.push({ at: finish, state: state as StateId, value });
  }
  given.push(...ledger.stateSettings);
  return given.sort((a, b) => a.at - b.at);
}

/** Returns the value of every state, by id: that at the start, then what it was given ({@link statesGivenIn}). */
export function stateValuesOf(ledger: Ledger): ReadonlyMap<StateId, string> {
  const { states } = ledger.inForce.outline.procedure;
  const values = new Map<StateId, string>(states.map(({ id, start }) => [id, start]));
  for (const { state, value } of statesGivenIn(ledger)) values.set(state, value);
  return values;
}

/** Returns the states that have an end value and do not have it. */
export function unsettledStates(ledger: Ledger): readonly UnsettledState[] {
  const values = stateValuesOf(ledger);
  return ledger.inForce.outline.procedure.states.flatMap((state): readonly UnsettledState[] => {
    const is = values.get(state.id) ?? state.start;
    return state.end === undefined || is === state.end ? [] : [{ state, is, mustBe: state.end }];
  });
}
