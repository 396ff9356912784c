import type { Location } from "../procedure/index.ts";
import type { ItemId } from "../units/index.ts";
import type { HappensBefore } from "./happens-before.ts";
import type { ItemMoves } from "./item-moves.ts";
import { itemMovesOf } from "./item-moves.ts";

/** Two concurrent steps that conflict over an item ([ORD3]). */
export interface Race {
  /** The item that one step moves while the other moves it too, or needs it to stay where it was. */
  readonly item: ItemId;
  /** Both steps, in reading order. */
  readonly steps: readonly [number, number];
  /** A step that moves the item. */
  readonly mover: number;
  /** The other one. */
  readonly other: number;
  /** What the other step does: it moves the item too, or it moves `handled` out of or into the item. */
  readonly need: "moves" | "takes-out" | "puts-in";
  /** The item the other step moves. */
  readonly handled: ItemId;
}

/** The races of a network. When there are more than {@link MOST_RACES}, the rest is left out. */
export interface Races {
  readonly races: readonly Race[];
  readonly complete: boolean;
}

/** The most races that are listed. A longer list would not help the author of the procedure. */
export const MOST_RACES = 1000;

/**
 * The most ways in which bags may lie in bags that are examined for one step. Races that only a further way would show
 * are missed.
 */
const MOST_NESTINGS = 200;

/** States which step moved an item last. `mover` is `null` when the item is still where it started. */
interface LastMove {
  readonly item: ItemId;
  readonly mover: number | null;
}

/**
 * Finds the races of an ordered network: pairs of concurrent steps of which one moves an item, while the other moves it
 * too, moves something that lies in it, or puts something into it (or into a bag inside it), in at least one
 * interleaving that the order allows. Each pair appears once for each item, in the reading order of the later step.
 */
export function racesOf(order: HappensBefore): Races {
  const moves = itemMovesOf(order);
  const found = new Map<string, Race>();
  let complete = true;
  const add = ({ item, mover, other, need, handled }: Omit<Race, "steps">) => {
    const steps: [number, number] = mover < other ? [mover, other] : [other, mover];
    const key = `${item} ${steps.join(" ")}`;
    const known = found.get(key);
    if (known ? known.need === "moves" || need !== "moves" : found.size >= MOST_RACES) {
      complete &&= known !== undefined;
      return;
    }
    // When both steps move the item, neither is the one that causes the conflict, so reading order decides.
    const [first, second] = need === "moves" ? steps : [mover, other];
    found.set(key, { item, steps, mover: first, other: second, need, handled });
  };
  for (const { index, step } of order.network.outline.steps) {
    if (!order.clock(index)) continue;
    const movedHere = new Map<ItemId, Location>();
    for (const { item, to } of step.moves) {
      for (const mover of moves.concurrentMovers(item, index))
        add({ item, mover, other: index, need: "moves", handled: item });
      const handling = { order, moves, step: index, movedHere };
      for (const [bag, mover] of needed({ ...handling, item, itself: false })) {
        add({ item: bag, mover, other: index, need: "takes-out", handled: item });
      }
      if ("item" in to) {
        for (const [bag, mover] of needed({ ...handling, item: to.item, itself: true })) {
          add({ item: bag, mover, other: index, need: "puts-in", handled: item });
        }
      }
      movedHere.set(item, to);
    }
    if (!complete) break;
  }
  const races = [...found.values()].sort((a, b) => a.steps[1] - b.steps[1] || a.steps[0] - b.steps[0]);
  return { races, complete };
}

/** A step that must reach an item. */
interface Reaching {
  readonly order: HappensBefore;
  readonly moves: ItemMoves;
  readonly step: number;
  readonly item: ItemId;
  /** Where the step itself has already moved items to. */
  readonly movedHere: ReadonlyMap<ItemId, Location>;
  /** True when the item itself must stay where it is too. */
  readonly itself: boolean;
}

/**
 * The bags that a step needs to stay where they are in order to reach an item, and the item itself if asked. Each comes
 * with a concurrent step that moves it.
 */
function needed({ order, moves, step, item: first, movedHere, itself }: Reaching): [ItemId, number][] {
  const found: [ItemId, number][] = [];
  let nestings = 0;
  const need = (item: ItemId, way: readonly LastMove[]) => {
    for (const mover of moves.concurrentMovers(item, step)) {
      if (mayComeAbout({ order, moves, way, step: mover, other: step })) found.push([item, mover]);
    }
  };
  const follow = (item: ItemId, way: readonly LastMove[], seen: readonly ItemId[]) => {
    nestings += 1;
    if (nestings > MOST_NESTINGS) return;
    const into = (at: Location | undefined, next: readonly LastMove[]) => {
      if (!at || !("item" in at) || seen.includes(at.item)) return;
      need(at.item, next);
      follow(at.item, next, [...seen, at.item]);
    };
    if (movedHere.has(item)) return into(movedHere.get(item), way);
    for (const mover of moves.lastMovers(item, step)) {
      into(mover === null ? moves.startOf(item) : moves.leftBy(item, mover), [...way, { item, mover }]);
    }
  };
  if (itself) need(first, []);
  follow(first, [], [first]);
  return found;
}

/** Two steps that are to be next, and the last moves of items before them. */
interface Moment {
  readonly order: HappensBefore;
  readonly moves: ItemMoves;
  readonly way: readonly LastMove[];
  readonly step: number;
  readonly other: number;
}

/**
 * True when some interleaving makes both steps the next to be done while every item of `way` was last moved by the step
 * given there. Only the steps that must be done by then matter: the predecessors of either step, the last movers, and
 * the predecessors of those. Each last mover must come after every other such step that moves the same item, and these
 * constraints must not form a circle.
 */
function mayComeAbout({ order, moves, way, step, other }: Moment): boolean {
  const lasts = way.flatMap(({ mover }) => mover ?? []);
  if (lasts.some((last) => last === step || order.before(step, last) || order.before(other, last)))
    return false;
  const isDone = (one: number) =>
    order.before(one, step) ||
    order.before(one, other) ||
    lasts.some((last) => one === last || order.before(one, last));
  const rivals = way.map(({ item, mover }) =>
    moves.moversOf(item).filter((one) => one !== mover && isDone(one)),
  );
  if (way.some(({ mover }, position) => mover === null && (rivals[position]?.length ?? 0) > 0)) return false;
  /**
   * For each last mover, the other last movers that must come even later, because this one is, or comes before, a step
   * that moves the same item as they do.
   */
  const later = way.map(({ mover }) =>
    rivals.flatMap((those, position) =>
      mover !== null && those.some((one) => one === mover || order.before(mover, one)) ? [position] : [],
    ),
  );
  const comesRound = (from: number, at: number, left: number): boolean =>
    left > 0 && (later[at] ?? []).some((next) => next === from || comesRound(from, next, left - 1));
  return way.every((_, position) => !comesRound(position, position, way.length));
}
