import { z } from "zod";
import { described, durationSchema, idDescribedAs } from "../procedure/index.ts";
import type { CrewId, DecisionId, ItemId, PlaceId, RecordId, StepId, SupplyId } from "../units/index.ts";

/** The format that a file of surprises names. */
export const SURPRISES_FORMAT = "tetherline.surprises/1";

/** The most surprises of a file. */
const MOST_SURPRISES = 100;

// Obscured and in any script, a surprise still fits what a hub takes as one entry.
const text = z.string().min(1).max(500);
const crew = idDescribedAs<CrewId>("a crew member");
const step = idDescribedAs<StepId>("a step");

const when = z
  .union([
    z.strictObject({ pet: durationSchema.describe("When it comes, in time since PET 0") }),
    z.strictObject({
      from: durationSchema,
      to: durationSchema.describe("It comes at a PET between the two, which the seed draws"),
    }),
    z.strictObject({ step: step.describe("It comes when this step begins") }),
    z.strictObject({
      place: idDescribedAs<PlaceId>("a place").describe("It comes when somebody has moved here"),
      crew: crew.optional().describe("Only when this crew member has"),
    }),
  ])
  .describe("When it comes, unless it is fired by hand");

// A plain union: the discriminated one would be a part of the first load, which shares its library.
const does = z.union([
  z.strictObject({
    kind: z.literal("stretch"),
    step,
    factor: z.number().gt(1).max(50).describe("The step takes so many times as long"),
  }),
  z.strictObject({
    kind: z.literal("record"),
    step,
    record: idDescribedAs<RecordId>("a record of the step"),
    value: z.number().describe("The value that is read, outside the limits of the record"),
  }),
  z.strictObject({
    kind: z.literal("missing"),
    item: idDescribedAs<ItemId>("an item"),
    says: text.describe("What the crew says when it looks for the item"),
    for: durationSchema.describe("How long the crew looks for it, unless somebody enters where it is"),
  }),
  z.strictObject({
    kind: z.literal("silent"),
    crew,
    for: durationSchema.describe("How long the crew member does not answer"),
  }),
  z.strictObject({
    kind: z.literal("contact"),
    for: durationSchema.describe("How long nobody outside is heard"),
  }),
  z.strictObject({
    kind: z.literal("supply"),
    crew,
    supply: idDescribedAs<SupplyId>("a supply of the crew member"),
    factor: z.number().gt(1).max(50).describe("It falls so many times as fast as planned"),
  }),
  z.strictObject({
    kind: z.literal("decision"),
    decision: idDescribedAs<DecisionId>("a decision"),
    outcome: z.string().min(1).max(200).describe("How it comes out"),
  }),
]);

const expect = z
  .strictObject({
    who: z.array(crew).min(1).max(20).describe("Who should notice it"),
    notice: text.describe("What they should notice"),
    within: durationSchema.describe("Within how long"),
    act: text.describe("What should be done"),
  })
  .describe("What the trainer expects; it stands beside what happened, and no marks are given");

const surprise = z.strictObject({
  id: idDescribedAs("the surprise"),
  title: text.max(200),
  when,
  does,
  chance: z
    .number()
    .gt(0)
    .max(1)
    .default(1)
    .describe("How likely the seed lets it come; 1 where nothing is said"),
  expect,
});

/** A file of surprises as it stands ([TRN1]). */
export const surprisesSchema = z.strictObject({
  $schema: z.string().optional(),
  format: z.literal(SURPRISES_FORMAT),
  procedure: idDescribedAs("the procedure that they are for"),
  title: text.max(200),
  summary: text.optional(),
  surprises: z.array(surprise).min(1).max(MOST_SURPRISES),
});

/** Surprises of a rehearsal, as their trainer wrote them. */
export type SurprisesFile = z.output<typeof surprisesSchema>;

/** One surprise. Times are in ms. */
export type Surprise = SurprisesFile["surprises"][number];

/** What a surprise brings about. */
export type SurpriseEffect = Surprise["does"];

/** A surprise as it is entered into a log. */
export const surpriseSchema = surprise;

/** The JSON Schema (2020-12) of a file of surprises, made from the Zod schema. A trainer's text editor reads it. */
export function surprisesJsonSchema(): object {
  const schema = z.toJSONSchema(surprisesSchema, { io: "input", target: "draft-2020-12" });
  return described(schema, "Tetherline surprises", `Surprises of a rehearsal, format ${SURPRISES_FORMAT}`);
}
