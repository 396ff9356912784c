import { z } from "zod";
import type {
  ContingencyId,
  CrewId,
  DecisionId,
  Duration,
  Instant,
  ItemId,
  Metres,
  PlaceId,
  RecordId,
  StepId,
  SupplyId,
  TaskId,
  WatchId,
  WindowId,
} from "../units/index.ts";
import {
  DURATION_PATTERN,
  ID_PATTERN,
  INSTANT_PATTERN,
  NO_TIME,
  parseDuration,
  parseInstant,
} from "../units/index.ts";
import { alertsInOrder } from "./alert-order.ts";

/** The format that this program writes. Files of older formats are migrated to it when they are read. */
export const FORMAT = "tetherline.procedure/1";

/**
 * The forms that the schema requires of texts. A pattern or check below gives one of these names as its message, and
 * `schema-findings` turns it into a sentence.
 */
export const TEXT_FORMS = ["id", "duration", "short-duration", "instant", "real-instant"] as const;

const idDescribedAs = <Id extends string>(of: string) =>
  z
    .string()
    .regex(ID_PATTERN, "id")
    .describe(`Id of ${of}`)
    .transform((text) => text as Id);

const crewId = idDescribedAs<CrewId>("a crew member");
const placeId = idDescribedAs<PlaceId>("a place");
const itemId = idDescribedAs<ItemId>("an item");
const windowId = idDescribedAs<WindowId>("a window");
const stepId = idDescribedAs<StepId>("a step");
const decisionId = idDescribedAs<DecisionId>("a decision");

const text = z.string().min(1).max(4000);
const finite = z.number();

const duration = z
  .string()
  .regex(DURATION_PATTERN, "duration")
  .describe("ISO 8601 duration, days to seconds: PT1H5M, PT90S")
  .transform((value, context): Duration => {
    const parsed = parseDuration(value);
    if (parsed !== null) return parsed;
    context.addIssue({ code: "custom", message: "short-duration" });
    return z.NEVER;
  });

const metres = finite.min(0).transform((value) => value as Metres);

const instant = z
  .string()
  .regex(INSTANT_PATTERN, "instant")
  .describe("RFC 3339 instant with an offset or Z: 2031-04-02T09:12:31Z")
  .transform((value, context): Instant => {
    const parsed = parseInstant(value);
    if (parsed !== null) return parsed;
    context.addIssue({ code: "custom", message: "real-instant" });
    return z.NEVER;
  });

/** Where an item is: at a place, with a crew member, or in another item ([PRO8]). */
export const locationSchema = z.union([
  z.strictObject({ crew: crewId }),
  z.strictObject({ place: placeId }),
  z.strictObject({ item: itemId }),
]);

const crewMember = z.strictObject({
  id: crewId,
  call: text.describe("Call sign, as spoken"),
  station: z.enum(["outside", "inside", "ground"]),
  start: placeId.optional().describe("Where the crew member is at PET 0"),
  tether: z.strictObject({ anchor: placeId, length: metres }).optional(),
});

const axis = finite.optional().describe("Metres along an axis that the author of the procedure chose");

const place = z.strictObject({
  id: placeId,
  label: text.optional(),
  x: axis,
  y: axis,
  z: axis,
  refuge: z.boolean().default(false).describe("A crew member who is here is safe"),
});

const route = z.strictObject({
  between: z.tuple([placeId, placeId]),
  length: metres.describe("Metres along the way"),
  time: duration.optional().describe("Time one crew member takes, either way"),
});

const item = z.strictObject({
  id: itemId,
  label: text.optional(),
  start: locationSchema,
  end: locationSchema.optional().describe("Where it must be when the walk is over"),
});

const span = z.union([
  z
    .strictObject({ from: duration, to: duration })
    .transform(({ from, to }) => ({ clock: "pet" as const, from, to })),
  z
    .strictObject({ from: instant, to: instant })
    .transform(({ from, to }) => ({ clock: "utc" as const, from, to })),
]);

const window = z.strictObject({
  id: windowId,
  label: text.optional(),
  kind: z.enum(["daylight", "darkness", "listed"]),
  spans: z.array(span).optional(),
});

const supply = z.strictObject({
  crew: crewId,
  id: idDescribedAs<SupplyId>("a supply"),
  label: text.optional(),
  unit: z.string().min(1).max(40).describe("UCUM code"),
  full: finite,
  redline: finite,
  perHour: finite.min(0),
});

const alert = z.strictObject({ level: z.enum(["warning", "caution", "note"]), text });

const time = z.union([
  duration.transform((likely) => ({ low: likely, likely, high: likely })),
  z.strictObject({ low: duration, likely: duration, high: duration }),
]);

const predecessor = z.union([
  stepId.transform((step) => ({ step, lag: NO_TIME })),
  z
    .strictObject({ step: stepId, lag: duration.optional() })
    .transform(({ step, lag }) => ({ step, lag: lag ?? NO_TIME })),
]);

const record = z.strictObject({
  id: idDescribedAs<RecordId>("a record"),
  label: text.optional(),
  unit: z.string().min(1).max(40).default("1").describe("UCUM code"),
  min: finite.optional(),
  max: finite.optional(),
});

const decision = z.strictObject({
  id: decisionId,
  ask: text,
  outcomes: z.array(z.string().regex(ID_PATTERN)).min(1),
  expect: z.string().regex(ID_PATTERN),
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
  moves: z.array(z.strictObject({ item: itemId, to: locationSchema })).default([]),
  anchor: placeId.optional().describe("The performer's tether is re-anchored here"),
  records: z.array(record).default([]),
  confirm: z.strictObject({ by: crewId, text }).optional(),
  decide: decision.optional(),
  when: z
    .record(z.string().regex(ID_PATTERN), z.string())
    .optional()
    .describe("Only if these decisions came out so"),
});

const task = z.strictObject({
  id: idDescribedAs<TaskId>("a task"),
  title: text,
  priority: z.enum(["essential", "get-ahead"]).default("essential"),
  closeout: z.boolean().default(false).describe("Must be done on the way home, however early"),
  steps: z.array(stepSchema),
});

const contingency = z.strictObject({
  id: idDescribedAs<ContingencyId>("a contingency"),
  title: text,
  tasks: z.array(task),
});

const watch = z.strictObject({
  id: idDescribedAs<WatchId>("a watch"),
  by: z.array(crewId).min(1),
  do: text,
  from: stepId.optional(),
  until: stepId.optional(),
  every: duration,
});

/** The whole procedure file, `tetherline.procedure/1`. The types and the JSON Schema are both derived from it. */
export const procedureSchema = z.strictObject({
  $schema: z.string().optional(),
  format: z.literal(FORMAT),
  id: z.string().regex(ID_PATTERN),
  title: text,
  revision: z.string().min(1).max(40).optional(),
  summary: text.optional(),
  setting: z.enum(["orbit", "pool", "surface"]).optional(),
  limits: z
    .strictObject({ elapsed: duration.optional() })
    .default({})
    .describe("The walk must be closed by this PET"),
  crew: z.array(crewMember).min(1),
  places: z.array(place).default([]),
  routes: z.array(route).default([]),
  items: z.array(item).default([]),
  windows: z.array(window).default([]),
  supplies: z.array(supply).default([]),
  tasks: z.array(task).min(1),
  contingencies: z.array(contingency).default([]),
  watches: z.array(watch).default([]),
});

/** A procedure as read: durations in ms, lists present even when empty, alerts sorted. */
export type Procedure = z.output<typeof procedureSchema>;
/** A procedure as written in its file. */
export type ProcedureFile = z.input<typeof procedureSchema>;
export type CrewMember = Procedure["crew"][number];
export type Place = Procedure["places"][number];
export type Route = Procedure["routes"][number];
export type Item = Procedure["items"][number];
export type TimeWindow = Procedure["windows"][number];
export type Supply = Procedure["supplies"][number];
export type Task = Procedure["tasks"][number];
export type Step = Task["steps"][number];
export type Alert = Step["alerts"][number];
export type StepRecord = Step["records"][number];
export type Decision = NonNullable<Step["decide"]>;
export type Contingency = Procedure["contingencies"][number];
export type Watch = Procedure["watches"][number];
/** Where an item is ([PRO8]). */
export type Location = z.output<typeof locationSchema>;
/** The low, likely and high duration of a step. */
export type StepTime = NonNullable<Step["time"]>;
