import { z } from "zod";
import type { RecordId, SupplyId, TaskId } from "../units/index.ts";
import { ID_PATTERN, NO_TIME } from "../units/index.ts";
import { alertsInOrder } from "./alert-order.ts";
import { idDescribedAs, locationSchema } from "./location-schema.ts";
import {
  crewId,
  decisionId,
  duration,
  finite,
  itemId,
  pictureId,
  placeId,
  stateValues,
  stepId,
  text,
  windowId,
} from "./schema-values.ts";

const alert = z.strictObject({ level: z.enum(["warning", "caution", "note"]), text });

const time = z.union([
  duration.transform((likely) => ({ low: likely, likely, high: likely })),
  z.strictObject({ low: duration, likely: duration, high: duration }),
]);

const predecessor = z.union([
  stepId.transform((step) => ({ step, lag: NO_TIME, within: null })),
  z
    .strictObject({
      step: stepId,
      lag: duration.optional(),
      within: duration.optional().describe("The step starts at most so long after that one is complete"),
    })
    .transform(({ step, lag, within }) => ({ step, lag: lag ?? NO_TIME, within: within ?? null })),
]);

const stand = z.union([
  z
    .array(crewId)
    .min(1)
    .transform((by) => ({ by, time: null })),
  z
    .strictObject({ by: z.array(crewId).min(1), time: time.optional() })
    .transform(({ by, time }) => ({ by, time: time ?? null })),
]);

const record = z.strictObject({
  id: idDescribedAs<RecordId>("a record"),
  label: text.optional(),
  unit: z.string().min(1).max(40).default("1").describe("UCUM code"),
  min: finite.optional(),
  max: finite.optional(),
  supply: idDescribedAs<SupplyId>(
    "a supply of whoever does the step, of which the value is a reading",
  ).optional(),
});

const decision = z.strictObject({
  id: decisionId,
  ask: text,
  outcomes: z.array(z.string().regex(ID_PATTERN)).min(1),
  expect: z.string().regex(ID_PATTERN),
});

const id = z.string().regex(ID_PATTERN, "id");

/** What a blank of a fragment was filled with. */
const blankValue = z.union([
  z.strictObject({ crew: crewId }),
  z.strictObject({ place: placeId }),
  z.strictObject({ item: itemId }),
  z.strictObject({ time }),
]);

const origin = z.strictObject({
  fragment: id.describe("Id of the fragment"),
  revision: z.string().min(1).max(40).describe("The fragment's revision"),
  use: id.describe("Tells apart the times that the fragment was put in"),
  part: id.describe("Id of the step in the fragment"),
  task: id.optional().describe("Id of its task in the fragment, where that has tasks"),
  blanks: z.record(id, blankValue).describe("What the blanks were filled with"),
});

/** One step as it stands in the file. */
export const stepSchema = z.strictObject({
  id: stepId,
  by: z.array(crewId).min(1).describe("Who does it; two or more make it a joint step"),
  do: text.describe("One action, imperative"),
  alerts: z
    .array(alert)
    .default([])
    .transform(alertsInOrder)
    .describe("Shown before the action: warnings, cautions, notes"),
  time: time.optional().describe("One duration, or low, likely and high; a translation may leave it out"),
  at: placeId.optional().describe("Where it is done"),
  to: placeId.optional().describe("A translation: where it ends"),
  after: z.array(predecessor).default([]).describe("Steps that must be complete before this one starts"),
  within: z.array(windowId).default([]).describe("Must lie wholly inside one span of every window named"),
  moves: z.array(z.strictObject({ item: itemId, to: locationSchema() })).default([]),
  anchor: placeId.optional().describe("The performer's tether is re-anchored here"),
  records: z.array(record).default([]),
  confirm: z.strictObject({ by: crewId, text }).optional(),
  decide: decision.optional(),
  when: z
    .record(z.string().regex(ID_PATTERN), z.string())
    .optional()
    .describe("Only if these decisions came out so"),
  needs: stateValues.optional().describe("It starts only while these states have these values"),
  sets: stateValues.optional().describe("When it is done these states have these values"),
  notBefore: duration.optional().describe("PET; it starts no earlier"),
  doneBy: duration.optional().describe("PET; it is done no later"),
  or: z.array(stand).default([]).describe("Who else could do it, each in the same or another time"),
  check: z.array(text).default([]).describe("Counted off one by one before the step is done"),
  pictures: z.array(pictureId).max(4).default([]).describe("Shown with the step"),
  refs: z.array(text).default([]).describe("Sheets and drawings the step refers to"),
  brief: text.optional().describe("What the presenter of a briefing says of it"),
  scene: z.boolean().default(false).describe("The storyboard has a picture of it"),
  from: origin.optional().describe("The fragment that it was put in from"),
});

/** One task as it stands in the file. */
export const taskSchema = z.strictObject({
  id: idDescribedAs<TaskId>("a task"),
  title: text,
  priority: z.enum(["essential", "get-ahead"]).default("essential"),
  closeout: z.boolean().default(false).describe("Must be done on the way home, however early"),
  steps: z.array(stepSchema),
  worth: finite.min(0).optional().describe("What doing it is worth, beside the others; for get-aheads"),
  order: z.literal("free").optional().describe("Its place among the tasks may be changed"),
  brief: text.optional().describe("What the presenter of a briefing says of it"),
});
