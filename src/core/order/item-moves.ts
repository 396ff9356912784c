import type { Location } from "../procedure/index.ts";
import type { ItemId } from "../units/index.ts";
import type { HappensBefore } from "./happens-before.ts";
import { turnsOf } from "./turns.ts";

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

/** The moves of the steps in a happens-before relation. */
export function itemMovesOf(order: HappensBefore): ItemMoves {
  const { outline } = order.network;
  const turns = turnsOf(order, ({ moves }) => moves.map(({ item }) => item));
  return {
    moversOf: turns.of,
    concurrentMovers: turns.concurrent,
    lastMovers: turns.lastBefore,
    leftBy: (item, mover) => outline.steps[mover]?.step.moves.findLast((move) => move.item === item)?.to,
    startOf: (item) => outline.item(item)?.start,
  };
}
