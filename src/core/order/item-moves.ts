import type { Location } from "../procedure/index.ts";
import type { ItemId } from "../units/index.ts";
import type { HappensBefore } from "./happens-before.ts";

/** The steps that move each item, and where an item may be when a step begins. */
export interface ItemMoves {
  /** The steps that move an item, by reading order index. */
  moversOf(item: ItemId): readonly number[];
  /** The steps that move an item and are concurrent with `step`. */
  concurrentMovers(item: ItemId, step: number): number[];
  /**
   * The steps that may have been the last to move an item when `step` begins, over all interleavings. `null` among them
   * means that the item may not have been moved at all.
   */
  lastMovers(item: ItemId, step: number): (number | null)[];
  /** Where the step `mover` leaves an item. */
  leftBy(item: ItemId, mover: number): Location | undefined;
  /** Where an item is before anything moves it. */
  startOf(item: ItemId): Location | undefined;
}

/** The first position in a sorted list from which on `isPast` holds. */
function firstPast(list: readonly number[], isPast: (step: number) => boolean): number {
  let low = 0;
  let high = list.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (isPast(list[middle] ?? -1)) high = middle;
    else low = middle + 1;
  }
  return low;
}

/** The moves of the steps in a happens-before relation. */
export function itemMovesOf(order: HappensBefore): ItemMoves {
  const { outline } = order.network;
  const left = new Map<ItemId, Map<number, Location>>();
  const chains = new Map<ItemId, Map<number, number[]>>();
  for (const index of [...order.network.order].sort((a, b) => a - b)) {
    const entry = outline.steps[index];
    for (const { item, to } of entry?.step.moves ?? []) {
      const byStep = left.get(item) ?? new Map<number, Location>();
      left.set(item, byStep);
      const isFirst = !byStep.has(index);
      byStep.set(index, to);
      if (!isFirst) continue;
      const lanes = chains.get(item) ?? new Map<number, number[]>();
      chains.set(item, lanes);
      // A joint step is listed in one of its lanes only, which is enough to find it. Each list is then a chain of
      // happens-before.
      const lane = entry?.performers[0] ?? -1;
      const chain = lanes.get(lane);
      if (chain) chain.push(index);
      else lanes.set(lane, [index]);
    }
  }
  const movers = new Map([...left].map(([item, byStep]) => [item, [...byStep.keys()]] as const));
  const aroundOf = (item: ItemId, step: number) =>
    [...(chains.get(item)?.values() ?? [])].map((chain) => {
      const from = firstPast(chain, (other) => !order.before(other, step));
      const to = firstPast(chain, (other) => order.before(step, other));
      return {
        last: chain[from - 1] ?? null,
        concurrent: chain.slice(from, to).filter((one) => one !== step),
      };
    });
  return {
    moversOf: (item) => movers.get(item) ?? [],
    concurrentMovers: (item, step) => aroundOf(item, step).flatMap(({ concurrent }) => concurrent),
    lastMovers: (item, step) => {
      const around = aroundOf(item, step);
      const before = around.flatMap(({ last }) => last ?? []);
      const latest = before.filter((one) => !before.some((other) => order.before(one, other)));
      return [...(latest.length === 0 ? [null] : latest), ...around.flatMap(({ concurrent }) => concurrent)];
    },
    leftBy: (item, mover) => left.get(item)?.get(mover),
    startOf: (item) => outline.item(item)?.start,
  };
}
