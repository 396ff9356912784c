import type { StateId } from "../units/index.ts";
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

/** The states that the steps in a happens-before relation set. A step sets its states when it is done. */
export function stateTurnsOf(order: HappensBefore): StateTurns {
  const { outline } = order.network;
  const turns = turnsOf(order, ({ sets }) => Object.keys(sets ?? {}) as StateId[]);
  const starts = new Map(outline.procedure.states.map(({ id, start }) => [id, start]));
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
