import { message } from "../../words/index.ts";
import type { HappensBefore, StateTurns } from "../order/index.ts";
import { MOST_RACES, stateTurnsOf, unmetNeeds } from "../order/index.ts";
import type { Finding, Outline, OutlineStep, State } from "../procedure/index.ts";
import { finding, stateLabel, valueLabel } from "../procedure/index.ts";
import type { StateId, StepId } from "../units/index.ts";

/**
 * Returns the findings on states over every order that the network allows ([PRO13]): two steps that set one to
 * different values with nothing between them, a step that may start while a state is otherwise than it needs, and a
 * state that may be otherwise at the end.
 */
export function stateFindings(order: HappensBefore): Finding[] {
  const { outline } = order.network;
  const { states } = outline.procedure;
  if (states.length === 0) return [];
  const turns = stateTurnsOf(order);
  const found = [
    ...states.flatMap((state) => raceFindings(turns, state)),
    ...outline.steps.flatMap((entry) => (order.clock(entry.index) ? needFindings(turns, entry) : [])),
  ];
  const listed = found.slice(0, MOST_RACES);
  if (found.length > MOST_RACES) {
    const more = message("order/more-races", { most: MOST_RACES });
    listed.push(finding("caution", "order/more-races", "", more));
  }
  return [...listed, ...states.flatMap((state, index) => endFindings(turns, state, index))];
}

const idOf = (outline: Outline, index: number) => outline.steps[index]?.step.id as StepId;

/** The races of a state: pairs of concurrent steps that set it to different values. */
function raceFindings({ order, settings }: StateTurns, { id: state }: State): Finding[] {
  const { outline } = order.network;
  const all = settings(state);
  let left = MOST_RACES + 1;
  return all.flatMap((other, position) =>
    all.slice(0, left > 0 ? position : 0).flatMap((one) => {
      if (left <= 0 || one.value === other.value || !order.concurrent(one.by, other.by)) return [];
      left -= 1;
      const race = message("state/race", {
        one: idOf(outline, one.by),
        other: idOf(outline, other.by),
        state: stateLabel(outline, state),
        value: valueLabel(outline, one.value),
        otherValue: valueLabel(outline, other.value),
      });
      const pointer = `${outline.steps[other.by]?.pointer}/sets/${state}`;
      return [
        finding("error", "state/race", pointer, race, {
          steps: [idOf(outline, one.by), idOf(outline, other.by)],
          things: [state],
        }),
      ];
    }),
  );
}

function needFindings(turns: StateTurns, { index, step, pointer }: OutlineStep): Finding[] {
  const { outline } = turns.order.network;
  return unmetNeeds(turns, index, step.needs ?? {}).map(({ code, state, other, why }) => {
    const unmet = message("state/needs", {
      step: step.id,
      state: stateLabel(outline, state),
      value: valueLabel(outline, step.needs?.[state] ?? ""),
      why,
    });
    return finding("error", code, `${pointer}/needs/${state}`, unmet, {
      steps: other === null ? [step.id] : inReadingOrder(outline, [step.id, other]),
      things: [state],
    });
  });
}

function inReadingOrder(outline: Outline, steps: readonly StepId[]): StepId[] {
  return [...steps].sort((a, b) => (outline.step(a)?.index ?? 0) - (outline.step(b)?.index ?? 0));
}

function endFindings({ order, atEnd }: StateTurns, { id, end }: State, index: number): Finding[] {
  const { outline } = order.network;
  if (end === undefined) return [];
  return atEnd(id).flatMap(({ value, by }) => {
    if (value === end) return [];
    const said = {
      state: stateLabel(outline, id as StateId),
      is: valueLabel(outline, value),
      end: valueLabel(outline, end),
    };
    if (by === null) {
      const never = message("state/not-at-its-end", said);
      return [finding("error", "state/not-at-its-end", `/states/${index}/end`, never, { things: [id] })];
    }
    const last = idOf(outline, by);
    const left = message("state/left-by", { ...said, step: last });
    const pointer = `${outline.steps[by]?.pointer}/sets/${id}`;
    return [finding("error", "state/not-at-its-end", pointer, left, { steps: [last], things: [id] })];
  });
}
