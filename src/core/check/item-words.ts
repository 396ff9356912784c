import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import { crewHolding } from "../custody/index.ts";
import type { Location, Outline } from "../procedure/index.ts";
import type { CrewId, ItemId } from "../units/index.ts";

/** The call signs of crew members. */
export const callsOf = (outline: Outline, crew: readonly CrewId[]) =>
  crew.map((one) => outline.crewMember(one)?.call ?? one);
/** An item as a sentence names it. */
export const labelOf = (outline: Outline, item: ItemId) => outline.item(item)?.label ?? item;
/** A place as a sentence names it. */
export const placeLabel = (outline: Outline, place: string) =>
  outline.procedure.places.find(({ id }) => id === place)?.label ?? place;

/** Where an item is, as part of a sentence. */
export function whereMessage(outline: Outline, location: Location | undefined): Message {
  if (!location) return message("custody/where-nowhere");
  if ("place" in location)
    return message("custody/where-place", { place: placeLabel(outline, location.place) });
  if ("item" in location) return message("custody/where-item", { item: labelOf(outline, location.item) });
  return message("custody/where-crew", { crew: callsOf(outline, crewHolding(location)) });
}
