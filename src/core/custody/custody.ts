import type { Location, Procedure } from "../procedure/index.ts";
import type { CrewId, ItemId, PlaceId } from "../units/index.ts";

/** Where every item is: each in exactly one location ([PRO8]). */
export type Custody = ReadonlyMap<ItemId, Location>;

const atStart = new WeakMap<Procedure, Custody>();

/** Where every item of a procedure is at PET 0. Worked out once for each procedure. */
export function custodyAtStart(procedure: Procedure): Custody {
  const known = atStart.get(procedure) ?? new Map(procedure.items.map(({ id, start }) => [id, start]));
  atStart.set(procedure, known);
  return known;
}

/** The crew member or place that holds an item in the end, through whatever it is packed in; `null` for an unknown item. */
export function holderOf(
  custody: Custody,
  item: ItemId,
): { readonly crew: CrewId } | { readonly place: PlaceId } | null {
  let location = custody.get(item);
  // A chain of bags is never longer than the number of items, since nothing is inside itself.
  for (let depth = 0; location && "item" in location && depth <= custody.size; depth += 1) {
    location = custody.get(location.item);
  }
  return location && !("item" in location) ? location : null;
}

/** True when `item` is `container`, or is packed in it, however deep. */
export function isWithin(custody: Custody, item: ItemId, container: ItemId): boolean {
  let at: ItemId | null = item;
  for (let depth = 0; at !== null && depth <= custody.size; depth += 1) {
    if (at === container) return true;
    const location: Location | undefined = custody.get(at);
    at = location && "item" in location ? location.item : null;
  }
  return false;
}

/** Custody after one item has been moved; `null` when it would end up inside itself. What is in the item goes with it. */
export function moved(custody: Custody, item: ItemId, to: Location): Custody | null {
  if ("item" in to && isWithin(custody, to.item, item)) return null;
  return new Map(custody).set(item, to);
}

/** Custody after several moves, one after another; those that would put an item inside itself change nothing. */
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
