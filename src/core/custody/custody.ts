import type { Location, Procedure } from "../procedure/index.ts";
import type { CrewId, ItemId } from "../units/index.ts";

/** Where every item is. Each item is in exactly one location ([PRO8]). */
export type Custody = ReadonlyMap<ItemId, Location>;

const atStart = new WeakMap<Procedure, Custody>();

/** Where every item of a procedure is at PET 0. The result is cached for each procedure. */
export function custodyAtStart(procedure: Procedure): Custody {
  const known = atStart.get(procedure) ?? new Map(procedure.items.map(({ id, start }) => [id, start]));
  atStart.set(procedure, known);
  return known;
}

/** Who or what holds an item, directly or through the items it is packed in; `null` for an unknown item. */
export function holderOf(custody: Custody, item: ItemId): Exclude<Location, { item: ItemId }> | null {
  let location = custody.get(item);
  // Nothing is inside itself, so a chain of bags is never longer than the number of items.
  for (let depth = 0; location && "item" in location && depth <= custody.size; depth += 1) {
    location = custody.get(location.item);
  }
  return location && !("item" in location) ? location : null;
}

/** The crew members who hold what is at a location: one, several at once ([PRO14]), or none. */
export function crewHolding(location: Location): readonly CrewId[] {
  if ("crews" in location) return location.crews;
  return "crew" in location ? [location.crew] : [];
}

/** True when two locations are the same. Several who hold an item are the same in any order. */
export function isSameLocation(a: Location, b: Location): boolean {
  if ("place" in a) return "place" in b && a.place === b.place;
  if ("item" in a) return "item" in b && a.item === b.item;
  const [ones, others] = [new Set(crewHolding(a)), new Set(crewHolding(b))];
  return ones.size === others.size && [...ones].every((crew) => others.has(crew));
}

/** True when `item` is `container`, or is packed in it at any depth. */
export function isWithin(custody: Custody, item: ItemId, container: ItemId): boolean {
  let at: ItemId | null = item;
  for (let depth = 0; at !== null && depth <= custody.size; depth += 1) {
    if (at === container) return true;
    const location: Location | undefined = custody.get(at);
    at = location && "item" in location ? location.item : null;
  }
  return false;
}

/**
 * Custody after one item has been moved, together with everything in it. Returns `null` when the item would end up
 * inside itself.
 */
export function moved(custody: Custody, item: ItemId, to: Location): Custody | null {
  if ("item" in to && isWithin(custody, to.item, item)) return null;
  return new Map(custody).set(item, to);
}

/** Custody after several moves in turn. A move that would put an item inside itself is skipped. */
export function movedInTurn(
  custody: Custody,
  moves: Iterable<{ readonly item: ItemId; readonly to: Location }>,
): Custody {
  const after = new Map(custody);
  for (const { item, to } of moves) {
    if (!("item" in to) || !isWithin(after, to.item, item)) after.set(item, to);
  }
  return after;
}
