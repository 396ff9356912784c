import { message } from "../../words/index.ts";
import { errorAt } from "./error-at.ts";
import type { Finding } from "./finding.ts";
import { nearest } from "./known-keys.ts";
import type { RawPart } from "./raw-file.ts";
import { entries, member, members, textOf } from "./raw-file.ts";
import type { RawStep } from "./raw-step.ts";
import { idOf, namedStep } from "./raw-step.ts";
import type { Resolve } from "./resolve-reference.ts";

/** The value of a state of crew members that nobody has. */
export const FREE = "free";

/** The values that each state of a file may have, by the state's id. */
export type RawStates = ReadonlyMap<string, readonly string[]>;

/** The states of a file of any shape, the first of those with one id. A state whose `values` have a wrong shape is left out. */
export function rawStates(root: RawPart): RawStates {
  const crew = entries(member(root, "crew")).flatMap((one) => idOf(one) ?? []);
  // Of two with one id the later one would win in a map, so they are put in from the last to the first.
  return new Map(
    entries(member(root, "states"))
      .toReversed()
      .flatMap((state): (readonly [string, readonly string[]])[] => {
        const id = idOf(state);
        const values = member(state, "values");
        if (id === null) return [];
        if (values.value === "crew") return [[id, [FREE, ...crew]]];
        return Array.isArray(values.value)
          ? [[id, entries(values).flatMap((value) => textOf(value) ?? [])]]
          : [];
      }),
  );
}

/** The errors in the declaration of states ([PRO13]): a value that stands twice, a start or end that is no value of it. */
export function stateFindings(root: RawPart, states: RawStates): Finding[] {
  return entries(member(root, "states")).flatMap((state) => {
    const id = idOf(state) ?? "";
    const values = states.get(id) ?? [];
    const found = ["start", "end"].flatMap((key) => valueFindings(states, id, member(state, key)));
    if (new Set(values).size < values.length) {
      const twice = message("state/value-twice", { state: id });
      found.push(errorAt(member(state, "values"), "file/doubled-id", twice, { things: [id] }));
    }
    return found;
  });
}

/** The errors in the values of states that a step or route needs, or a step sets: no such state, no such value. */
export function stateValueFindings(
  holder: RawPart,
  states: RawStates,
  resolve: Resolve,
  step?: RawStep,
): Finding[] {
  return members(holder).flatMap(([id, value]) => [
    ...resolve("state", { value: id, path: value.path }, step),
    ...valueFindings(states, id, value, step),
  ]);
}

function valueFindings(states: RawStates, state: string, part: RawPart, step?: RawStep): Finding[] {
  const value = textOf(part);
  const values = states.get(state);
  if (value === null || !values || values.includes(value)) return [];
  const meant = nearest(value, values);
  const said = meant
    ? message("state/no-such-value-meant", { state, value, meant })
    : message("state/no-such-value", { state, value });
  return [
    errorAt(part, "state/no-such-value", said, { steps: step ? namedStep(step) : [], things: [state] }),
  ];
}
