import type { RandomSource } from "../plan/index.ts";
import type { Layout, Split } from "./layout.ts";
import type { SplitModel } from "./split-model.ts";

/** A split of its own with the same values. */
export const copyOf = ({ order, choice }: Split): Split => ({ order: order.slice(), choice: choice.slice() });

/** The ways in which one split is made of another. */
export class Moves {
  readonly #model: SplitModel;
  readonly #barred: readonly Uint8Array[];
  readonly #random: RandomSource;
  readonly #open: readonly number[];
  readonly #free: readonly number[];

  constructor(model: SplitModel, barred: readonly Uint8Array[], random: RandomSource) {
    this.#model = model;
    this.#barred = barred;
    this.#random = random;
    this.#open = model.groups.flatMap(({ options }, group) => (options.length > 1 ? [group] : []));
    this.#free = model.tasks.flatMap(({ isFree }, task) => (isFree ? [task] : []));
  }

  /** True when there is nothing to choose. */
  get isEmpty(): boolean {
    return this.#open.length === 0 && this.#free.length === 0;
  }

  #oneOf(list: readonly number[]): number {
    return list[Math.floor(this.#random() * list.length)] ?? -1;
  }

  /** Changes one thing, mostly with a step that the finish hangs on. */
  change(split: Split, critical: readonly number[], layout: Layout): void {
    const step = critical.length > 0 && this.#random() < 0.75 ? this.#oneOf(critical) : -1;
    if (step < 0 || !this.#relieve(split, step, layout)) this.#anything(split);
  }

  /** Gives a step to others or puts its task elsewhere; false where neither can be done. */
  #relieve(split: Split, step: number, { because }: Layout): boolean {
    const { groups, groupOf, steps, tasks } = this.#model;
    const group = groupOf[step] as number;
    const task = steps[step]?.task ?? -1;
    const before = steps[because[step] ?? -1]?.task ?? -1;
    const isOpen = (groups[group]?.options.length ?? 0) > 1;
    const isFree = tasks[task]?.isFree === true;
    if (isOpen && (!isFree || this.#random() < 0.5)) this.#give(split, group);
    else if (isFree) {
      const isAhead = before >= 0 && before !== task && this.#random() < 0.5;
      this.#put(split, task, isAhead ? split.order.indexOf(before) : -1);
    } else if (before >= 0 && tasks[before]?.isFree === true) {
      // Where the step itself must stay, what it waits for may get out of its way.
      this.#put(split, before, -1);
    } else return false;
    return true;
  }

  /** Gives the steps of a group to others. */
  #give({ choice }: Split, group: number): void {
    const barred = this.#barred[group];
    if (!barred) return;
    const now = choice[group] as number;
    const option = Math.floor(this.#random() * (barred.length - 1));
    const next = option >= now ? option + 1 : option;
    choice[group] = barred[next] === 1 ? 0 : next;
  }

  /** Puts a free task elsewhere among those that it may pass; at −1 anywhere. */
  #put({ order }: Split, task: number, wanted: number): void {
    const { stays, tasks } = this.#model;
    const count = tasks.length;
    const at = order.indexOf(task);
    let first = at;
    while (first > 0 && stays[(order[first - 1] as number) * count + task] === 0) first -= 1;
    let last = at;
    while (last < count - 1 && stays[task * count + (order[last + 1] as number)] === 0) last += 1;
    if (first === last) return;
    const any = first + Math.floor(this.#random() * (last - first));
    const to = wanted >= 0 ? Math.min(Math.max(wanted, first), last) : any >= at ? any + 1 : any;
    if (to < at) order.copyWithin(to + 1, to, at);
    else order.copyWithin(at, at + 1, to + 1);
    order[to] = task;
  }

  /** A split with a few things changed at random. */
  shaken(split: Split): Split {
    const next = copyOf(split);
    const count = 2 + Math.floor((this.#open.length + this.#free.length) / 10);
    for (let each = 0; each < count; each += 1) this.#anything(next);
    return next;
  }

  /** A split with everything changed at random. */
  scattered(split: Split): Split {
    const next = copyOf(split);
    for (const group of this.#open) if (this.#random() < 0.5) this.#give(next, group);
    for (const _ of [1, 2]) for (const task of this.#free) this.#put(next, task, -1);
    return next;
  }

  #anything(split: Split): void {
    const isGiven = this.#free.length === 0 || (this.#open.length > 0 && this.#random() < 0.5);
    if (isGiven) this.#give(split, this.#oneOf(this.#open));
    else this.#put(split, this.#oneOf(this.#free), -1);
  }
}
