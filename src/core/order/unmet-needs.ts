import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { Outline, StateValues } from "../procedure/index.ts";
import { stateLabel, valueLabel } from "../procedure/index.ts";
import type { StateId, StepId } from "../units/index.ts";
import type { StateSetting, StateTurns } from "./state-turns.ts";

/** A value that a step needs a state to have, and that it does not have in every order ([PRO13]). */
export interface UnmetNeed {
  readonly code: "state/not-set" | "state/unset" | "state/between";
  readonly state: StateId;
  /** The step that sets it too late, sets it otherwise, or may come between; `null` when no step does. */
  readonly other: StepId | null;
  /** Why it may be otherwise, and both ways to mend that. */
  readonly why: Message;
}

/** The most steps that are named for one state that a step needs: with these mended, further ones are named. */
const MOST_OTHERS = 3;

/** What the needs of a step, or of a route it leads over, lack in some order that the network allows. */
export function unmetNeeds(turns: StateTurns, step: number, needs: StateValues): UnmetNeed[] {
  return (Object.entries(needs) as [StateId, string][]).flatMap(([state, value]) =>
    turns
      .before(state, step)
      .filter((setting) => setting.value !== value)
      .slice(0, MOST_OTHERS)
      .map((setting) => unmetNeed(turns, step, { state, value, setting })),
  );
}

/** The value that is needed, and a setting that gives the state another one. */
interface Clash {
  readonly state: StateId;
  readonly value: string;
  readonly setting: StateSetting;
}

function unmetNeed(turns: StateTurns, step: number, { state, value, setting }: Clash): UnmetNeed {
  const { order } = turns;
  const { outline } = order.network;
  const said = {
    step: idOf(outline, step),
    state: stateLabel(outline, state),
    value: valueLabel(outline, value),
    is: valueLabel(outline, setting.value),
  };
  const { by } = setting;
  if (by !== null && order.concurrent(by, step)) {
    const other = idOf(outline, by);
    return { code: "state/between", state, other, why: message("state/between", { ...said, other }) };
  }
  const rights = turns.settings(state).filter((one) => one.value === value && one.by !== step);
  const unordered = rights.find((one) => order.concurrent(one.by, step));
  const late = unordered ?? rights.find((one) => order.before(step, one.by));
  if (late) {
    const other = idOf(outline, late.by);
    const key = unordered ? "state/not-set-first" : "state/set-too-late";
    return { code: "state/not-set", state, other, why: message(key, { ...said, other }) };
  }
  if (by === null)
    return { code: "state/not-set", state, other: null, why: message("state/never-set", said) };
  const other = idOf(outline, by);
  return { code: "state/unset", state, other, why: message("state/unset", { ...said, other }) };
}

const idOf = (outline: Outline, index: number) => outline.steps[index]?.step.id as StepId;
