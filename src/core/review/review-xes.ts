import { create } from "xmlbuilder2";
import type { OutlineStep } from "../procedure/index.ts";
import type { Duration, Instant } from "../units/index.ts";
import { formatInstant, later } from "../units/index.ts";
import type { Review, StepReview } from "./review.ts";

const EXTENSIONS = [
  { name: "Concept", prefix: "concept", uri: "http://www.xes-standard.org/concept.xesext" },
  { name: "Lifecycle", prefix: "lifecycle", uri: "http://www.xes-standard.org/lifecycle.xesext" },
  { name: "Organizational", prefix: "org", uri: "http://www.xes-standard.org/org.xesext" },
  { name: "Time", prefix: "time", uri: "http://www.xes-standard.org/time.xesext" },
] as const;

const CLASSIFIERS = [
  { name: "Activity", keys: "concept:name" },
  { name: "Activity and lifecycle", keys: "concept:name lifecycle:transition" },
  { name: "Crew member", keys: "org:resource" },
] as const;

type Kind = "string" | "date";
type Attribute = readonly [kind: Kind, key: string, value: string];

interface XesEvent {
  readonly at: Instant;
  readonly attributes: readonly Attribute[];
}

/** What events of a walk always have, with the values the standard asks for where they would be missing. */
const EVENT_GLOBALS: readonly Attribute[] = [
  ["string", "concept:name", "UNKNOWN"],
  ["string", "concept:instance", "UNKNOWN"],
  ["string", "lifecycle:transition", "complete"],
  ["string", "org:resource", "UNKNOWN"],
  ["date", "time:timestamp", "1970-01-01T00:00:00.000Z"],
];

/** XML turns a line break in an attribute into a blank, so breaks are written as blanks in the first place. */
const attributeText = (value: string) => value.replaceAll(/\s+/g, " ").trim();

/**
 * A review as an event log in XES (IEEE 1849-2016): one log, one trace for the walk, and for each performer of each step
 * an event for its start and one for its completion (a skipped step: one `manualskip`), in the order of time.
 * Events of one joint step share their `concept:instance`.
 */
export function reviewXes(review: Review): string {
  const { outline, opened } = review;
  const xml = create({ version: "1.0", encoding: "UTF-8", invalidCharReplacement: "\ufffd" });
  const log = xml.ele("log", {
    "xes.version": "1849.2016",
    "xes.features": "",
    xmlns: "http://www.xes-standard.org/",
  });
  const put = (parent: typeof log, [kind, key, value]: Attribute) =>
    parent.ele(kind, { key, value: attributeText(value) });
  for (const extension of EXTENSIONS) log.ele("extension", extension);
  put(log.ele("global", { scope: "trace" }), ["string", "concept:name", "UNKNOWN"]);
  const event = log.ele("global", { scope: "event" });
  for (const attribute of EVENT_GLOBALS) put(event, attribute);
  for (const classifier of CLASSIFIERS) log.ele("classifier", classifier);
  put(log, ["string", "concept:name", outline.procedure.title]);
  put(log, ["string", "lifecycle:model", "standard"]);
  const trace = log.ele("trace");
  put(trace, ["string", "concept:name", opened.walk]);
  put(trace, ["string", "procedure", outline.procedure.id]);
  if (review.end) put(trace, ["string", "end", review.end.end]);
  for (const { attributes } of eventsOf(review)) {
    const element = trace.ele("event");
    for (const attribute of attributes) put(element, attribute);
  }
  return `${xml.end({ prettyPrint: true })}\n`;
}

function eventsOf(review: Review): XesEvent[] {
  const { outline, petZero } = review;
  if (petZero === null) return [];
  const events = review.steps.flatMap((step): XesEvent[] => {
    const entry = outline.steps[step.index];
    if (!entry || !step.actual) return [];
    return entry.performers.flatMap((lane) => eventsFor(step, entry, lane, petZero, review));
  });
  // Sorting keeps the reading order of what happens at the same time, and starts before completions.
  return events.sort((a, b) => a.at - b.at);
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
