import type { StepId } from "../units/index.ts";

/**
 * A value for every step, by its id. Never changed in place: a table with another value for one step shares everything else
 * with the table it came from, so that one more of them costs little. A step that comes in later is put behind those that are
 * there; nothing is renumbered.
 */
export class StepTable<Value> {
  readonly #slots: ReadonlyMap<StepId, number>;
  readonly #values: readonly Value[];

  private constructor(slots: ReadonlyMap<StepId, number>, values: readonly Value[]) {
    this.#slots = slots;
    this.#values = values;
  }

  /** A table that has the same value for each of some steps. */
  static filled<Value>(steps: Iterable<StepId>, value: Value): StepTable<Value> {
    const slots = new Map<StepId, number>();
    for (const step of steps) if (!slots.has(step)) slots.set(step, slots.size);
    return new StepTable(slots, new Array<Value>(slots.size).fill(value));
  }

  /** The value of a step; `undefined` for one that is not in the table. */
  get(step: StepId): Value | undefined {
    const slot = this.#slots.get(step);
    return slot === undefined ? undefined : this.#values[slot];
  }

  /** The same table with another value for one step, which may be one that was not in it. */
  with(step: StepId, value: Value): StepTable<Value> {
    const slot = this.#slots.get(step);
    if (slot === undefined) {
      return new StepTable(new Map(this.#slots).set(step, this.#values.length), [...this.#values, value]);
    }
    const values = [...this.#values];
    values[slot] = value;
    return new StepTable(this.#slots, values);
  }

  /** Every step with its value, in the order in which the steps came in. */
  *[Symbol.iterator](): IterableIterator<readonly [StepId, Value]> {
    for (const [step, slot] of this.#slots) yield [step, this.#values[slot] as Value];
  }
}
