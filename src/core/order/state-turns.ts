import type { StateId, StepId } from "../units/index.ts";
import type { HappensBefore } from "./happens-before.ts";
import { turnsOf } from "./turns.ts";

/** A value that a state may have, and the step that sets it; `by` is `null` for the value at PET 0. */
export interface StateSetting {
  readonly value: string;
  readonly by: number | null;
}

/** The steps that set each state, and the values that it may have, over all interleavings that the order allows ([PRO13]). */
export interface StateTurns {
  readonly order: HappensBefore;
  /** The settings of a state of which any may be the last one when `step` begins. */
  before(state: StateId, step: number): readonly StateSetting[];
  /** The settings of a state of which any may be the last one of all. */
  atEnd(state: StateId): readonly StateSetting[];
  /** Every step that sets a state, with the value. */
  settings(state: StateId): readonly (StateSetting & { readonly by: number })[];
}

/** How the states of a walk stand: their values, and which steps are complete, so that they set nothing any more. */
export interface StatesNow {
  readonly values: ReadonlyMap<StateId, string>;
  isComplete(step: number): boolean;
}

/**
 * The states that the steps in a happens-before relation set. A step sets its states when it is done. Before the first
 * of them a state has its `start`; in a walk it has the value that it has `now`, and only what is not complete sets any.
 */
export function stateTurnsOf(order: HappensBefore, now: StatesNow | null = null): StateTurns {
  const { outline } = order.network;
  const isOver = (id: StepId) => now?.isComplete(outline.step(id)?.index ?? -1) === true;
  const turns = turnsOf(order, ({ id, sets }) => (isOver(id) ? [] : (Object.keys(sets ?? {}) as StateId[])));
  const starts = new Map(outline.procedure.states.map(({ id, start }) => [id, now?.values.get(id) ?? start]));
  const settingOf = (state: StateId, by: number | null): StateSetting => ({
    value: (by === null ? starts.get(state) : outline.steps[by]?.step.sets?.[state]) ?? "",
    by,
  });
  return {
    order,
    before: (state, step) => turns.lastBefore(state, step).map((by) => settingOf(state, by)),
    atEnd: (state) => turns.lastOfAll(state).map((by) => settingOf(state, by)),
    settings: (state) => turns.of(state).map((by) => ({ value: settingOf(state, by).value, by })),
  };
}
