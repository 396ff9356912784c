import type { Custody } from "../custody/index.ts";
import { isSameLocation } from "../custody/index.ts";
import type { Item, Location, Outline } from "../procedure/index.ts";
import type { ItemId } from "../units/index.ts";

/** An item that is not where it must be at the end of the walk. */
export interface MisplacedItem {
  readonly item: Item;
  readonly is: Location | undefined;
  /** `null` for an item without an `end`, which must be at a refuge or with somebody who is at one. */
  readonly mustBe: Location | null;
}

/**
 * Returns the items that are not where they must be at the end of the walk. An item without an `end` is misplaced when
 * it lies, directly or in a bag, at a place that is not a refuge. Being with a crew member is accepted, since that does
 * not tell where the crew member is.
 */
export function misplacedItems(outline: Outline, items: Custody): readonly MisplacedItem[] {
  return outline.procedure.items.flatMap((item): readonly MisplacedItem[] => {
    const is = items.get(item.id);
    if (item.end) return is && isSameLocation(is, item.end) ? [] : [{ item, is, mustBe: item.end }];
    return is && liesOutside(outline, items, is) ? [{ item, is, mustBe: null }] : [];
  });
}

function liesOutside(outline: Outline, items: ReadonlyMap<ItemId, Location>, location: Location): boolean {
  const seen = new Set<ItemId>();
  let at: Location | undefined = location;
  while (at && "item" in at && !seen.has(at.item)) {
    seen.add(at.item);
    at = items.get(at.item);
  }
  return at !== undefined && "place" in at && outline.place(at.place)?.refuge !== true;
}
