import type { Location } from "../procedure/index.ts";
import type { ItemId } from "../units/index.ts";
import type { HappensBefore } from "./happens-before.ts";
import type { ItemMoves } from "./item-moves.ts";
import { itemMovesOf } from "./item-moves.ts";

/** Two concurrent steps that get in each other's way over an item ([ORD3]). */
export interface Race {
  /** The item that is moved while the other step moves it too, or needs it where it was. */
  readonly item: ItemId;
  /** Both steps, in reading order. */
  readonly steps: readonly [number, number];
  /** A step that moves the item. */
  readonly mover: number;
  /** The other one. */
  readonly other: number;
  /** What the other step does: moves the item too, or moves `handled`, which is in the item or goes into it. */
  readonly need: "moves" | "takes-out" | "puts-in";
  /** The item the other step moves. */
  readonly handled: ItemId;
}

/** The races of a network; when there are more than {@link MOST_RACES} the rest is left out. */
export interface Races {
  readonly races: readonly Race[];
  readonly complete: boolean;
}

/** So many races are listed; a procedure with more is not helped by the rest. */
export const MOST_RACES = 1000;

/** So many ways in which bags may lie in bags are followed for one step; beyond, only races with the movers already found are missed. */
const MOST_NESTINGS = 200;

/** That an item was last moved by a step; `null` when it is still where it started. */
interface LastMove {
  readonly item: ItemId;
  readonly mover: number | null;
}

/**
 * The races of an ordered network: pairs of concurrent steps of which one moves an item, and the other moves it too, moves
 * something that lies in it, or puts something into it (or into a bag in it), in at least one interleaving that the order allows.
 * Each pair once an item, in reading order of the later step.
 */
export function racesOf(order: HappensBefore): Races {
  const moves = itemMovesOf(order);
  const found = new Map<string, Race>();
  let complete = true;
  const add = (item: ItemId, mover: number, other: number, need: Race["need"], handled: ItemId) => {
    const steps: [number, number] = mover < other ? [mover, other] : [other, mover];
    const key = `${item} ${steps.join(" ")}`;
    const known = found.get(key);
    if (known ? known.need === "moves" || need !== "moves" : found.size >= MOST_RACES) {
      complete &&= known !== undefined;
      return;
    }
    // When both move it, neither is the one that gets in the way.
    const [first, second] = need === "moves" ? steps : [mover, other];
    found.set(key, { item, steps, mover: first, other: second, need, handled });
  };
  for (const { index, step } of order.network.outline.steps) {
    if (!order.clock(index)) continue;
    const movedHere = new Map<ItemId, Location>();
    for (const { item, to } of step.moves) {
      for (const mover of moves.concurrentMovers(item, index)) add(item, mover, index, "moves", item);
      for (const [bag, mover] of needed(order, moves, index, item, movedHere, false)) {
        add(bag, mover, index, "takes-out", item);
      }
      if ("item" in to) {
        for (const [bag, mover] of needed(order, moves, index, to.item, movedHere, true)) {
          add(bag, mover, index, "puts-in", item);
        }
      }
      movedHere.set(item, to);
    }
    if (!complete) break;
  }
  const races = [...found.values()].sort((a, b) => a.steps[1] - b.steps[1] || a.steps[0] - b.steps[0]);
  return { races, complete };
}

/** The bags a step needs where they are in order to get at an item (and the item itself, if asked), each with a concurrent step that moves it. */
function needed(
  order: HappensBefore,
  moves: ItemMoves,
  index: number,
  first: ItemId,
  movedHere: ReadonlyMap<ItemId, Location>,
  itself: boolean,
): [ItemId, number][] {
  const found: [ItemId, number][] = [];
  let nestings = 0;
  const need = (item: ItemId, way: readonly LastMove[]) => {
    for (const mover of moves.concurrentMovers(item, index)) {
      if (mayComeAbout(order, moves, way, mover, index)) found.push([item, mover]);
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
    for (const mover of moves.lastMovers(item, index)) {
      into(mover === null ? moves.startOf(item) : moves.leftBy(item, mover), [...way, { item, mover }]);
    }
  };
  if (itself) need(first, []);
  follow(first, [], [first]);
  return found;
}

/**
 * True when some interleaving brings both steps up next with every item of `way` last moved as it says. It is enough to look at
 * the steps that must have been done by then: those before either step, the last movers, and those before them. Each last
 * mover must come behind every other of these that moves its item, and that must not go round in a circle.
 */
function mayComeAbout(
  order: HappensBefore,
  moves: ItemMoves,
  way: readonly LastMove[],
  step: number,
  other: number,
): boolean {
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
  /** For each last mover those that must be still later, because it is, or comes before, a rival of theirs. */
  const later = way.map(({ mover }) =>
    rivals.flatMap((those, position) =>
      mover !== null && those.some((one) => one === mover || order.before(mover, one)) ? [position] : [],
    ),
  );
  const comesRound = (from: number, at: number, left: number): boolean =>
    left > 0 && (later[at] ?? []).some((next) => next === from || comesRound(from, next, left - 1));
  return way.every((_, position) => !comesRound(position, position, way.length));
}
