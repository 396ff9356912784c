import { z } from "zod";
import type { ContingencyId, SupplyId, WatchId } from "../units/index.ts";
import { ID_PATTERN } from "../units/index.ts";
import { idDescribedAs, locationSchema } from "./location-schema.ts";
import {
  crewId,
  duration,
  finite,
  instant,
  itemId,
  metres,
  pictureId,
  placeId,
  stateId,
  stateValues,
  stepId,
  text,
  windowId,
} from "./schema-values.ts";
import { taskSchema } from "./step-schema.ts";
import { wordsSchema } from "./words-schema.ts";

/** The formats that are read, oldest first. A file stays in its own until something of a newer one is used ([PRO11]). */
export const FORMATS = ["tetherline.procedure/1", "tetherline.procedure/2"] as const;

/** The newest format. */
export const FORMAT = FORMATS[1];

/** The most bytes of one picture ([MAP3]). */
export const MOST_PICTURE_BYTES = 400_000;
/** As many letters as they take in Base64. */
const MOST_PICTURE_LETTERS = Math.ceil(MOST_PICTURE_BYTES / 3) * 4;

const crewMember = z.strictObject({
  id: crewId,
  call: text.describe("Call sign, as spoken"),
  station: z.enum(["outside", "inside", "ground"]),
  start: placeId.optional().describe("Where the crew member is at PET 0"),
  tether: z.strictObject({ anchor: placeId, length: metres }).optional(),
});

const place = z.strictObject({
  id: placeId,
  label: text.optional(),
  x: finite.optional().describe("Metres along the author's own axis, to the right on the map"),
  y: finite.optional().describe("Metres along the author's own axis, up on the map"),
  z: finite.optional().describe("Metres of height; the map has a side view where places differ"),
  refuge: z.boolean().default(false).describe("A crew member who is here is safe"),
});

const route = z.strictObject({
  between: z.tuple([placeId, placeId]),
  length: metres.describe("Metres along the way"),
  time: duration.optional().describe("Time one crew member takes, either way"),
  needs: stateValues.optional().describe("A way only while these states have these values"),
});

const item = z.strictObject({
  id: itemId,
  label: text.optional(),
  start: locationSchema(),
  end: locationSchema().optional().describe("Where it must be when the walk is over"),
  hands: z
    .union([z.literal(0), z.literal(1), z.literal(2)])
    .default(0)
    .describe("How many hands it takes while it is held; 0 is stowed on the suit"),
  mass: finite.min(0).optional().describe("Kilograms"),
  size: text.optional(),
});

const state = z.strictObject({
  id: stateId,
  label: text.optional(),
  values: z
    .union([z.literal("crew"), z.array(z.string().regex(ID_PATTERN, "id")).min(1)])
    .describe('The values it may have; "crew": free, or the crew member who has it'),
  start: z.string().regex(ID_PATTERN, "id").describe("Its value at PET 0"),
  end: z.string().regex(ID_PATTERN, "id").optional().describe("The value it must have when the walk is over"),
});

const picture = z.strictObject({
  id: pictureId,
  label: text.optional(),
  type: z.enum(["image/png", "image/jpeg", "image/webp", "image/svg+xml"]),
  data: z
    .string()
    .regex(/^(?:[A-Za-z0-9+/]{4})*(?:[A-Za-z0-9+/]{2}==|[A-Za-z0-9+/]{3}=)?$/, "encoded-picture")
    .min(1)
    .max(MOST_PICTURE_LETTERS)
    .describe("The picture in Base64 (RFC 4648), at most 400 kB of it"),
});

const site = z.strictObject({
  picture: pictureId,
  left: finite.describe("x of its left edge, in metres"),
  top: finite.describe("y of its upper edge, in metres"),
  width: finite.positive().describe("Metres"),
  height: finite.positive().describe("Metres"),
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

const contingency = z.strictObject({
  id: idDescribedAs<ContingencyId>("a contingency"),
  title: text,
  when: text.optional().describe("What it is for, in words: EV2 does not answer"),
  tasks: z.array(taskSchema),
});

const watch = z.strictObject({
  id: idDescribedAs<WatchId>("a watch"),
  by: z.array(crewId).min(1),
  do: text,
  from: stepId.optional(),
  until: stepId.optional(),
  every: duration,
  time: duration.optional().describe("How long it takes each time"),
});

/** The whole procedure file, `tetherline.procedure/1` or `/2`. The types and the JSON Schema are both derived from it. */
export const procedureSchema = z.strictObject({
  $schema: z.string().optional(),
  format: z.enum(FORMATS),
  id: z.string().regex(ID_PATTERN),
  title: text,
  revision: z.string().min(1).max(40).optional(),
  summary: text.optional(),
  setting: z.enum(["orbit", "pool", "surface"]).optional(),
  limits: z
    .strictObject({
      elapsed: duration.optional().describe("The walk must be closed by this PET"),
      apart: metres.optional().describe("Metres between those outside, by the ways, at most"),
    })
    .default({}),
  crew: z.array(crewMember).min(1),
  places: z.array(place).default([]),
  routes: z.array(route).default([]),
  items: z.array(item).default([]),
  states: z.array(state).default([]),
  windows: z.array(window).default([]),
  supplies: z.array(supply).default([]),
  tasks: z.array(taskSchema).min(1),
  contingencies: z.array(contingency).default([]),
  watches: z.array(watch).default([]),
  pictures: z.array(picture).default([]),
  site: site.optional().describe("A picture that lies under the map"),
  language: z.string().optional().describe("The author's language as a BCP 47 tag: en"),
  words: wordsSchema.optional(),
});

/** A procedure as read: durations in ms, lists present even when empty, alerts sorted. */
export type Procedure = z.output<typeof procedureSchema>;
/** A procedure as written in its file. */
export type ProcedureFile = z.input<typeof procedureSchema>;
export type CrewMember = Procedure["crew"][number];
export type Place = Procedure["places"][number];
export type Route = Procedure["routes"][number];
export type Item = Procedure["items"][number];
/** What has one value of several at a time: a hatch, the power, who is in a foot restraint ([PRO13]). */
export type State = Procedure["states"][number];
export type TimeWindow = Procedure["windows"][number];
export type Supply = Procedure["supplies"][number];
export type Task = Procedure["tasks"][number];
export type Step = Task["steps"][number];
export type Alert = Step["alerts"][number];
export type StepRecord = Step["records"][number];
export type Decision = NonNullable<Step["decide"]>;
export type Contingency = Procedure["contingencies"][number];
export type Watch = Procedure["watches"][number];
/** Values by the id of their state: those a step or route needs, or a step sets ([PRO13]). */
export type StateValues = z.output<typeof stateValues>;
/** Where an item is ([PRO8]). */
export type Location = z.output<ReturnType<typeof locationSchema>>;
/** The low, likely and high duration of a step. */
export type StepTime = NonNullable<Step["time"]>;
