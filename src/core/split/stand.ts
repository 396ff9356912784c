import type { Location, Outline, OutlineStep, Step, StepTime } from "../procedure/index.ts";
import type { CrewId, ItemId, StateId } from "../units/index.ts";
import type { Standing } from "./split-case.ts";

/** Who does a step, and in what time: one entry of its `or`, or as the file has it. */
export interface Stand {
  readonly by: readonly CrewId[];
  /** The time when it is another one than the step's own. */
  readonly time: StepTime | null;
}

/** One person in the place of another, in everything that a step says of them. */
export type Substitution = (crew: CrewId) => CrewId | null;

/** Those of one stand in the places of those who do the step in the file, one by one; `null` for whoever has no successor. */
export function substitutionFor({ by }: Step, stand: Stand): Substitution {
  return (crew) => {
    const seat = by.indexOf(crew);
    return seat === -1 ? crew : (stand.by[seat] ?? null);
  };
}

/** Something that steps take from one value to another: where an item is, or how a state stands. */
export interface Use {
  /** The item or state, such as `item:wrench`. */
  readonly of: string;
  /** The value that the step finds, and the one it leaves. They are the same for a step that only needs it so. */
  readonly from: Held;
  readonly to: Held;
}

/** A value of an item or a state. Those who hold it are told apart, since others may take their places. */
export interface Held {
  readonly crew: readonly CrewId[];
  /** The value when nobody holds it. */
  readonly value: string;
}

const heldAt = (location: Location): Held => {
  if ("crew" in location) return { crew: [location.crew], value: "" };
  if ("crews" in location) return { crew: [...location.crews].sort(), value: "" };
  return { crew: [], value: "place" in location ? `place:${location.place}` : `item:${location.item}` };
};

/** The key of a value after a substitution; `null` when somebody who holds it has no successor. */
export function heldKey({ crew, value }: Held, substitution: Substitution): string | null {
  if (crew.length === 0) return value;
  const holders = crew.map(substitution);
  return holders.includes(null) ? null : `crew:${holders.sort().join(" ")}`;
}

/**
 * What steps use, by reading order index, and what each thing is before any of them. The values are those that the steps
 * find in an order of theirs; `order` has their reading order indices.
 */
export function usesOf(
  outline: Outline,
  order: readonly number[],
  standing: Standing,
): {
  readonly uses: ReadonlyMap<number, readonly Use[]>;
  readonly start: ReadonlyMap<string, Held>;
} {
  const items = new Map<ItemId, Location>(standing.items);
  const states = new Map<StateId, string>(standing.states);
  const isOfCrew = new Set<string>(
    outline.procedure.states.flatMap(({ id, values }) => (values === "crew" ? [id] : [])),
  );
  const stateValue = (state: StateId, value: string): Held =>
    isOfCrew.has(state) && value !== "free"
      ? { crew: [value as CrewId], value: "" }
      : { crew: [], value: `value:${value}` };
  const start = new Map<string, Held>([
    ...[...items].map(([item, at]): [string, Held] => [`item:${item}`, heldAt(at)]),
    ...[...states].map(([state, value]): [string, Held] => [`state:${state}`, stateValue(state, value)]),
  ]);
  const uses = new Map<number, readonly Use[]>();
  for (const index of order) {
    const entry = outline.steps[index];
    if (!entry) continue;
    const found = new Map<string, Use>();
    const use = (of: string, from: Held, to: Held) =>
      found.set(of, { of, from: found.get(of)?.from ?? from, to });
    const touch = (item: ItemId) => {
      const at = items.get(item);
      if (at) use(`item:${item}`, heldAt(at), heldAt(at));
      if (at && "item" in at && at.item !== item) touch(at.item);
    };
    for (const { item, to } of entry.step.moves) {
      const from = items.get(item) ?? to;
      if ("item" in from) touch(from.item);
      if ("item" in to && to.item !== item) touch(to.item);
      use(`item:${item}`, heldAt(from), heldAt(to));
      items.set(item, to);
    }
    for (const [state, value] of statesIn(entry, "needs"))
      use(`state:${state}`, stateValue(state, value), stateValue(state, value));
    for (const [state, value] of statesIn(entry, "sets")) {
      use(`state:${state}`, stateValue(state, states.get(state) ?? value), stateValue(state, value));
      states.set(state, value);
    }
    if (found.size > 0) uses.set(index, [...found.values()]);
  }
  return { uses, start };
}

const statesIn = ({ step }: OutlineStep, key: "needs" | "sets") =>
  Object.entries(step[key] ?? {}) as [StateId, string][];

/** Everybody who takes part in a stand, as lanes. */
export const lanesIn = (outline: Outline, { by }: Stand): readonly number[] =>
  by.map((crew) => outline.lane(crew));
