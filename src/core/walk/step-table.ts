import type { StepId } from "../units/index.ts";

/** The number of values in a group. A change copies one group and the list of groups. */
const GROUP = 32;

type Groups<Value> = readonly (readonly Value[])[];

/**
 * Maps each step id to a value. A table is never changed in place: changing one value returns another table that
 * shares nearly everything with the old one, so keeping many of them is cheap. A step that is added later goes at the
 * end, and no other step changes its position.
 */
export class StepTable<Value> {
  readonly #slots: ReadonlyMap<StepId, number>;
  readonly #groups: Groups<Value>;

  private constructor(slots: ReadonlyMap<StepId, number>, groups: Groups<Value>) {
    this.#slots = slots;
    this.#groups = groups;
  }

  /** Returns a table with the same value for each of the given steps. */
  static filled<Value>(steps: Iterable<StepId>, value: Value): StepTable<Value> {
    const slots = new Map<StepId, number>();
    for (const step of steps) if (!slots.has(step)) slots.set(step, slots.size);
    const groups: Value[][] = [];
    for (let from = 0; from < slots.size; from += GROUP) {
      groups.push(new Array<Value>(Math.min(GROUP, slots.size - from)).fill(value));
    }
    return new StepTable(slots, groups);
  }

  /** Returns the value of a step, or `undefined` when the step is not in the table. */
  get(step: StepId): Value | undefined {
    const slot = this.#slots.get(step);
    return slot === undefined ? undefined : this.#groups[Math.floor(slot / GROUP)]?.[slot % GROUP];
  }

  /** Returns a table with another value for one step. A step that is not in the table is added. */
  with(step: StepId, value: Value): StepTable<Value> {
    const known = this.#slots.get(step);
    const slot = known ?? this.#slots.size;
    const groups = this.#groups.slice();
    const group = (groups[Math.floor(slot / GROUP)] ?? []).slice();
    group[slot % GROUP] = value;
    groups[Math.floor(slot / GROUP)] = group;
    const slots = known === undefined ? new Map(this.#slots).set(step, slot) : this.#slots;
    return new StepTable(slots, groups);
  }

  /** Yields every step with its value, in the order in which the steps were added. */
  *[Symbol.iterator](): IterableIterator<readonly [StepId, Value]> {
    for (const step of this.#slots.keys()) yield [step, this.get(step) as Value];
  }
}
