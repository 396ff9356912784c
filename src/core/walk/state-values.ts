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

/**
 * Returns the value of every state, by id: that at the start, then what the steps that were done set and what was
 * entered by itself (`state.set`), in the order of their times. Of two at one time the step in reading order counts
 * first, and what was entered by itself last. A reopened step sets nothing.
 */
export function stateValuesOf(ledger: Ledger): ReadonlyMap<StateId, string> {
  const { outline } = ledger.inForce;
  const values = new Map<StateId, string>(outline.procedure.states.map(({ id, start }) => [id, start]));
  const set: { readonly at: Instant; readonly state: StateId; readonly value: string }[] = [];
  for (const { step } of outline.steps) {
    const { status, finish } = progressOf(ledger, step.id);
    if (status !== "done" || finish === null) continue;
    for (const [state, value] of Object.entries(step.sets ?? {}))
      set.push({ at: finish, state: state as StateId, value });
  }
  set.push(...ledger.stateSettings);
  for (const { state, value } of set.sort((a, b) => a.at - b.at)) values.set(state, value);
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
