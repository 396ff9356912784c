import { seededSource } from "../../../src/core/plan/index.ts";
import type { Split } from "../../../src/core/split/layout.ts";
import type { SplitModel } from "../../../src/core/split/split-model.ts";

/** A split that the model allows, by chance. */
export function splitByChance({ tasks, groups, stays }: SplitModel, seed: number): Split {
  const random = seededSource(seed);
  const left = new Set(tasks.keys());
  const order: number[] = [];
  while (left.size > 0) {
    const open = [...left].filter((one) =>
      [...left].every((other) => stays[other * tasks.length + one] === 0),
    );
    const next = open[Math.floor(random() * open.length)] ?? -1;
    left.delete(next);
    order.push(next);
  }
  return {
    order: Int32Array.from(order),
    choice: Int32Array.from(groups, ({ options }) => Math.floor(random() * options.length)),
  };
}
