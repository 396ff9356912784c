import type { Network } from "../order/index.ts";
import type { Step } from "../procedure/index.ts";
import type { Duration, StateId } from "../units/index.ts";
import type { Course, StateGiven } from "./course.ts";
import { isCompleteBy } from "./course.ts";

/**
 * The value of every state at a PET of a course ([PRO13]): that at the start, then what was given up to then, and what
 * the steps set that are planned or expected to be complete by then. A skipped step sets nothing.
 */
export function statesAt(course: Course, pet: Duration): ReadonlyMap<StateId, string> {
  const { outline, network, steps, statesGiven } = course;
  const values = new Map<StateId, string>(outline.procedure.states.map(({ id, start }) => [id, start]));
  if (values.size === 0) return values;
  // In the order of the network, so that of two steps done at one time the later one counts.
  const expected = settersOf(network).flatMap((step): StateGiven[] => {
    const planned = steps.get(step.id);
    if (!planned || planned.stage === "done" || planned.stage === "skipped") return [];
    if (!isCompleteBy(course, planned, pet)) return [];
    return Object.entries(step.sets ?? {}).map(([state, value]) => ({
      at: planned.finish,
      state: state as StateId,
      value,
    }));
  });
  const all = [...statesGiven.filter(({ at }) => at <= pet), ...expected].sort((a, b) => a.at - b.at);
  for (const { state, value } of all) values.set(state, value);
  return values;
}

const knownSetters = new WeakMap<Network, readonly Step[]>();

/** The steps of a network that set states, in its order. Cached for each, since a return is planned from every step. */
function settersOf(network: Network): readonly Step[] {
  const kept = knownSetters.get(network);
  if (kept) return kept;
  const setters = network.order.flatMap((index) => {
    const step = network.outline.steps[index]?.step;
    return step?.sets ? [step] : [];
  });
  knownSetters.set(network, setters);
  return setters;
}
