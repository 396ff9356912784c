import type { StepId } from "../units/index.ts";

/** So many values stand together; a change copies these, and the list of the groups. */
const GROUP = 32;

type Groups<Value> = readonly (readonly Value[])[];

/**
 * A value for every step, by its id. Never changed in place: a table with another value for one step shares nearly everything
 * else with the table it came from, so that one more of them costs little. A step that comes in later is put behind those that
 * are there; nothing is renumbered.
 */
export class StepTable<Value> {
  readonly #slots: ReadonlyMap<StepId, number>;
  readonly #groups: Groups<Value>;

  private constructor(slots: ReadonlyMap<StepId, number>, groups: Groups<Value>) {
    this.#slots = slots;
    this.#groups = groups;
  }

  /** A table that has the same value for each of some steps. */
  static filled<Value>(steps: Iterable<StepId>, value: Value): StepTable<Value> {
    const slots = new Map<StepId, number>();
    for (const step of steps) if (!slots.has(step)) slots.set(step, slots.size);
    const groups: Value[][] = [];
    for (let from = 0; from < slots.size; from += GROUP) {
      groups.push(new Array<Value>(Math.min(GROUP, slots.size - from)).fill(value));
    }
    return new StepTable(slots, groups);
  }

  /** The value of a step; `undefined` for one that is not in the table. */
  get(step: StepId): Value | undefined {
    const slot = this.#slots.get(step);
    return slot === undefined ? undefined : this.#groups[Math.floor(slot / GROUP)]?.[slot % GROUP];
  }

  /** The same table with another value for one step, which may be one that was not in it. */
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

  /** Every step with its value, in the order in which the steps came in. */
  *[Symbol.iterator](): IterableIterator<readonly [StepId, Value]> {
    for (const step of this.#slots.keys()) yield [step, this.get(step) as Value];
  }
}
