import type { CrewId, ItemId, PlaceId } from "../../core/units/index.ts";

/** What somebody asks about on the map. */
export type Chosen =
  | { readonly kind: "crew"; readonly id: CrewId }
  | { readonly kind: "place"; readonly id: PlaceId }
  | { readonly kind: "item"; readonly id: ItemId };
