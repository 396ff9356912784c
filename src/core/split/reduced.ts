import type { Split } from "./layout.ts";
import { Layout } from "./layout.ts";
import type { SplitModel } from "./split-model.ts";

/** One thing in which a split is not as the file has it. */
export type Departure =
  | { readonly kind: "group"; readonly group: number }
  | { readonly kind: "task"; readonly task: number };

/** What a split changes: the groups that change hands, and the fewest free tasks that are elsewhere. */
export function departuresOf({ tasks }: SplitModel, { order, choice }: Split): readonly Departure[] {
  const kept = keptInOrder(order, (task) => tasks[task]?.isFree === true);
  return [
    ...[...choice.keys()].flatMap((group): Departure[] =>
      choice[group] === 0 ? [] : [{ kind: "group", group }],
    ),
    ...[...order].flatMap((task): Departure[] => (kept.has(task) ? [] : [{ kind: "task", task }])),
  ];
}

/** The tasks that keep their order, as many as can be: all that are not free, which always do, among them. */
function keptInOrder(order: Int32Array, isFree: (task: number) => boolean): ReadonlySet<number> {
  const weight = new Float64Array(order.length);
  const from = new Int32Array(order.length).fill(-1);
  let last = 0;
  for (let at = 0; at < order.length; at += 1) {
    let most = 0;
    for (let one = 0; one < at; one += 1)
      if ((order[one] as number) < (order[at] as number) && (weight[one] as number) > most) {
        most = weight[one] as number;
        from[at] = one;
      }
    weight[at] = most + (isFree(order[at] as number) ? 1 : order.length);
    if ((weight[at] as number) > (weight[last] as number)) last = at;
  }
  const kept = new Set<number>();
  for (let at = last; at >= 0; at = from[at] ?? -1) kept.add(order[at] as number);
  return kept;
}

/** The split without one of its departures; `null` where the task cannot go back alone. */
export function without(model: SplitModel, split: Split, departure: Departure): Split | null {
  const next = { order: split.order.slice(), choice: split.choice.slice() };
  if (departure.kind === "group") {
    next.choice[departure.group] = 0;
    return next;
  }
  const { task } = departure;
  const others = [...split.order].filter((one) => one !== task);
  // Behind the last of those that stand before it in the file.
  const before = others.findLastIndex((one) => one === task - 1);
  const order = others.toSpliced(before + 1, 0, task);
  const { stays, tasks } = model;
  const isAllowed = order.every((one, at) =>
    at < before + 1
      ? stays[task * tasks.length + one] === 0
      : at === before + 1 || stays[one * tasks.length + task] === 0,
  );
  return isAllowed ? { order: Int32Array.from(order), choice: next.choice } : null;
}

/** The split without the departures whose undoing costs nothing ([FIT3]). */
export function reduced(model: SplitModel, split: Split): Split {
  const layout = new Layout(model);
  const cost = layout.costOf(split);
  let now = split;
  let left = departuresOf(model, now);
  for (let isSmaller = true; isSmaller; ) {
    isSmaller = false;
    for (const departure of left) {
      const next = without(model, now, departure);
      if (!next || layout.costOf(next) > cost) continue;
      const fewer = departuresOf(model, next);
      if (fewer.length >= departuresOf(model, now).length) continue;
      now = next;
      isSmaller = true;
    }
    left = departuresOf(model, now);
  }
  return now;
}
