import { z } from "zod";
import type { CrewId, ItemId, PlaceId } from "../units/index.ts";
import { ID_PATTERN, once } from "../units/index.ts";

/** An id that says in an author's editor what it names. */
export const idDescribedAs = <Id extends string>(of: string) =>
  z
    .string()
    .regex(ID_PATTERN, "id")
    .describe(`Id of ${of}`)
    .transform((text) => text as Id);

/**
 * Where an item is: at a place, with a crew member, with several at once, or in another item ([PRO8], [PRO14]). Made when it is first asked
 * for, since logs name it too, which are read without any procedure.
 */
export const locationSchema = once(() => {
  const crewId = idDescribedAs<CrewId>("a crew member");
  return z.union([
    z.strictObject({ crew: crewId }),
    z.strictObject({ crews: z.array(crewId).min(2).describe("Held by all of them together") }),
    z.strictObject({ place: idDescribedAs<PlaceId>("a place") }),
    z.strictObject({ item: idDescribedAs<ItemId>("an item") }),
  ]);
});
