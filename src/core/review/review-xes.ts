import { XMLBuilder } from "fast-xml-parser";
import type { OutlineStep } from "../procedure/index.ts";
import type { Duration, Instant } from "../units/index.ts";
import { formatInstant, later } from "../units/index.ts";
import type { AmendmentReview } from "./amendment-review.ts";
import type { RecordKnown } from "./record.ts";
import { NOT_ASKED, recordDocument } from "./record.ts";
import type { Review, StepReview } from "./review.ts";

const EXTENSIONS = [
  { name: "Concept", prefix: "concept", uri: "http://www.xes-standard.org/concept.xesext" },
  { name: "Lifecycle", prefix: "lifecycle", uri: "http://www.xes-standard.org/lifecycle.xesext" },
  { name: "Organizational", prefix: "org", uri: "http://www.xes-standard.org/org.xesext" },
  { name: "Time", prefix: "time", uri: "http://www.xes-standard.org/time.xesext" },
] as const;

/** The names of classifiers are names of XML without a colon, so they are no words. */
const CLASSIFIERS = [
  { name: "Activity", keys: "concept:name" },
  { name: "ActivityAndLifecycle", keys: "concept:name lifecycle:transition" },
  { name: "CrewMember", keys: "org:resource" },
] as const;

type Kind = "string" | "date";
type Attribute = readonly [kind: Kind, key: string, value: string];

interface XesEvent {
  readonly at: Instant;
  readonly attributes: readonly Attribute[];
}

/** The attributes that every event of a walk has, with the default values that the standard requires. */
const EVENT_GLOBALS: readonly Attribute[] = [
  ["string", "concept:name", "UNKNOWN"],
  ["string", "concept:instance", "UNKNOWN"],
  ["string", "lifecycle:transition", "complete"],
  ["string", "org:resource", "UNKNOWN"],
  ["date", "time:timestamp", "1970-01-01T00:00:00.000Z"],
];

/** Matches characters that XML 1.0 (fifth edition, production 2) does not allow in a document. */
const NO_XML_CHARACTER = /[^\t\n\r\u{20}-\u{d7ff}\u{e000}-\u{fffd}\u{10000}-\u{10ffff}]/gu;

/**
 * Returns a text for an XML attribute, with white space reduced to single blanks. XML parsers turn a line break in an
 * attribute into a blank, so it is written as a blank from the start.
 */
const attributeText = (value: string) =>
  value.replaceAll(NO_XML_CHARACTER, "\ufffd").replaceAll(/\s+/g, " ").trim();

/** An element in the form that the builder expects: its name with its children, and its attributes. */
type XmlElement = Readonly<Record<string, unknown>>;

const element = (
  name: string,
  attributes: Readonly<Record<string, string>> = {},
  children: readonly XmlElement[] = [],
): XmlElement => ({ [name]: children, ":@": attributes });

const attributeElement = ([kind, key, value]: Attribute): XmlElement =>
  element(kind, { key, value: attributeText(value) });

/**
 * Returns a review as an event log in XES (IEEE 1849-2016). The log has one trace for the walk. For each performer of
 * each step, the trace has one event for the start and one for the completion (a skipped step has one `manualskip`),
 * sorted by time. An amendment of the plan is one event, `plan.amended`, with its reason. Events of one joint step share their `concept:instance`. The trace says what verifying the log came to (`record`).
 */
export function reviewXes(review: Review, record: RecordKnown = NOT_ASKED): string {
  const { outline, opened } = review;
  const ending: readonly Attribute[] = review.end ? [["string", "end", review.end.end]] : [];
  const trace = element("trace", {}, [
    attributeElement(["string", "concept:name", opened.walk]),
    attributeElement(["string", "procedure", outline.procedure.id]),
    ...ending.map(attributeElement),
    ...recordAttributes(record).map(attributeElement),
    ...eventsOf(review).map(({ attributes }) => element("event", {}, attributes.map(attributeElement))),
  ]);
  const log = element(
    "log",
    { "xes.version": "1849.2016", "xes.features": "", xmlns: "http://www.xes-standard.org/" },
    [
      ...EXTENSIONS.map((extension) => element("extension", extension)),
      element("global", { scope: "trace" }, [attributeElement(["string", "concept:name", "UNKNOWN"])]),
      element("global", { scope: "event" }, EVENT_GLOBALS.map(attributeElement)),
      ...CLASSIFIERS.map((classifier) => element("classifier", classifier)),
      attributeElement(["string", "concept:name", outline.procedure.title]),
      attributeElement(["string", "lifecycle:model", "standard"]),
      trace,
    ],
  );
  const builder = new XMLBuilder({
    preserveOrder: true,
    ignoreAttributes: false,
    attributeNamePrefix: "",
    suppressEmptyNode: true,
    suppressBooleanAttributes: false,
    format: true,
  });
  const body = builder.build([log]);
  return `<?xml version="1.0" encoding="UTF-8"?>\n${body.trim()}\n`;
}

/** What the trace says of the log as a record, each key being one of the JSON document behind `record.`. */
function recordAttributes(record: RecordKnown): Attribute[] {
  return Object.entries(recordDocument(record)).map(([name, value]) => [
    "string",
    `record.${name}`,
    Array.isArray(value) ? value.join(" ") : String(value),
  ]);
}

function eventsOf(review: Review): XesEvent[] {
  const { outline, petZero } = review;
  if (petZero === null) return [];
  const events = review.steps.flatMap((step): XesEvent[] => {
    const entry = outline.step(step.step);
    if (!entry || !step.actual) return [];
    return entry.performers.flatMap((lane) => eventsFor(step, entry, lane, petZero, review));
  });
  events.push(...review.amendments.map(amendmentEvent));
  // The sort is stable: events at the same time stay in reading order, with starts before completions.
  return events.sort((a, b) => a.at - b.at);
}

/** The event of an amendment: its reason, and the steps it touched. */
function amendmentEvent({ source, id, at, actor, reason, steps }: AmendmentReview): XesEvent {
  return {
    at,
    attributes: [
      ["string", "concept:name", "plan.amended"],
      ["string", "concept:instance", `${source} ${id}`],
      ["string", "lifecycle:transition", "complete"],
      ["string", "org:resource", actor ?? "UNKNOWN"],
      ["date", "time:timestamp", formatInstant(at)],
      ["string", "reason", reason],
      ["string", "steps", steps.map(({ step, how }) => `${step} ${how}`).join("; ")],
    ],
  };
}

function eventsFor(
  { actual, ending }: StepReview,
  { step, task, number }: OutlineStep,
  lane: number,
  petZero: Instant,
  { outline }: Review,
): XesEvent[] {
  const member = outline.crew[lane];
  if (!actual || !member) return [];
  const event = (pet: Duration, transition: string): XesEvent => {
    const at = later(petZero, pet);
    return {
      at,
      attributes: [
        ["string", "concept:name", `${number} ${step.do}`],
        ["string", "concept:instance", step.id],
        ["string", "lifecycle:transition", transition],
        ["string", "org:resource", member.id],
        ["string", "org:role", member.station],
        ["date", "time:timestamp", formatInstant(at)],
        ["string", "task", task.id],
      ],
    };
  };
  if (ending === "skipped") return [event(actual.finish, "manualskip")];
  return [event(actual.start, "start"), event(actual.finish, "complete")];
}
