import type { Say } from "../../words/index.ts";
import type { Stretch } from "../course/index.ts";
import type { Outline } from "../procedure/index.ts";
import { surprisesDocument } from "../training/index.ts";
import type { Duration, Instant } from "../units/index.ts";
import { formatInstant, inSeconds } from "../units/index.ts";
import type { AmendmentReview, DroppedStep } from "./amendment-review.ts";
import type { RecordKnown } from "./record.ts";
import { NOT_ASKED, recordDocument } from "./record.ts";
import type { NoteReview, Review, StepReview, StruckReview, WaitTotal } from "./review.ts";

const seconds = (duration: Duration | null): number | null =>
  duration === null ? null : inSeconds(duration);
const instant = (at: Instant | null): string | null => (at === null ? null : formatInstant(at));
const stretch = (one: Stretch | null) =>
  one && {
    start: inSeconds(one.start),
    finish: inSeconds(one.finish),
    time: inSeconds(one.finish - one.start),
  };

/**
 * Returns a review as one JSON document. Times are in seconds of PET, differences (actual − planned) in seconds, and
 * instants in RFC 3339. The same log gives the same document. `say` turns messages into text; `record` is what verifying the log came to.
 */
export function reviewDocument(review: Review, say: Say, record: RecordKnown = NOT_ASKED) {
  const { opened, outline, end } = review;
  const { procedure } = outline;
  return {
    walk: opened.walk,
    mode: opened.mode,
    procedure: { id: procedure.id, title: procedure.title, revision: procedure.revision ?? null },
    petZero: instant(review.petZero),
    until: instant(review.until),
    record: recordDocument(record),
    end: end && { end: end.end, at: inSeconds(end.at), reason: say(end.reason) },
    finish: {
      planned: seconds(review.plannedFinish),
      inForce: seconds(review.inForceFinish),
      actual: seconds(review.actualFinish),
      difference: seconds(review.finishDifference),
      limit: seconds(review.limit),
      margin: seconds(review.margin),
    },
    holds: review.holds.map((hold) => ({ ...stretch(hold), reason: hold.reason, lifted: hold.lifted })),
    decisions: review.decisions,
    decided: review.decided.map((one) => ({ ...one, at: formatInstant(one.at) })),
    watches: review.watches.map(({ watch, due, isKept }) => ({ watch, due: inSeconds(due), kept: isKept })),
    readings: review.readings.map(({ impossible, ...one }) => ({
      ...one,
      at: formatInstant(one.at),
      counted: impossible === null,
    })),
    reopenings: review.reopenings.map((one) => ({ ...one, at: formatInstant(one.at) })),
    amendments: review.amendments.map((one) => amendment(one, say)),
    dropped: review.dropped.map(dropped),
    corrections: review.corrections.map(({ step: _, ...one }) => ({ ...one, at: formatInstant(one.at) })),
    alerts: {
      raised: review.alerts.raised.map((one) => ({ ...one, at: formatInstant(one.at) })),
      seen: review.alerts.seen.map((one) => ({ ...one, at: formatInstant(one.at) })),
    },
    surprises: surprisesDocument(review.surprises, say),
    delay: review.delay.map((one) => ({
      step: one.step,
      share: inSeconds(one.share),
      time: inSeconds(one.time),
      plannedTime: seconds(one.plannedTime),
      low: inSeconds(one.low),
      high: inSeconds(one.high),
    })),
    lanes: review.lanes.map((lane) => ({
      crew: lane.crew,
      until: inSeconds(lane.until),
      worked: inSeconds(lane.worked),
      translated: inSeconds(lane.translated),
      waited: lane.waited.map(laneWait),
      idle: inSeconds(lane.idle),
      done: lane.done,
      skipped: lane.skipped,
    })),
    tasks: review.tasks.map((task) => ({
      task: task.task,
      title: task.title,
      getAhead: task.getAhead,
      planned: task.planned && { ...stretch(task.planned), crewTime: inSeconds(task.planned.crewTime) },
      actual: task.actual && { ...stretch(task.actual), crewTime: inSeconds(task.actual.crewTime) },
      difference: {
        start: seconds(task.startDifference),
        finish: seconds(task.finishDifference),
        time: seconds(task.timeDifference),
        crewTime: seconds(task.crewTimeDifference),
      },
      done: task.done,
      skipped: task.skipped,
      of: task.of,
    })),
    steps: review.steps.map((step) => stepDocument(outline, step, say)),
    notes: review.notes.map(note),
    struck: review.struck.map((one) => struck(one, say)),
    items: Object.fromEntries([...review.items].sort(([a], [b]) => (a < b ? -1 : 1))),
    deviations: review.deviations.map(({ kind, step, text, at }) => ({
      kind,
      step,
      text: say(text),
      at: formatInstant(at),
    })),
    ignored: review.ignored.map(({ source, id, reason }) => ({ source, id, reason: say(reason) })),
  };
}

/** The JSON document of a review. */
export type ReviewDocument = ReturnType<typeof reviewDocument>;

function stepDocument(outline: Outline, review: StepReview, say: Say) {
  const entry = outline.step(review.step);
  return {
    step: review.step,
    number: entry?.number ?? "",
    task: entry?.task.id ?? "",
    by: entry?.step.by ?? [],
    ending: review.ending,
    planned: stretch(review.planned),
    inForce: stretch(review.inForce),
    amended: review.amended,
    actual: stretch(review.actual),
    difference: {
      start: seconds(review.startDifference),
      finish: seconds(review.finishDifference),
      time: seconds(review.timeDifference),
    },
    waits: review.waits.map(({ crew, from, to, on }) => ({
      crew,
      seconds: inSeconds(to - from),
      on: "notBefore" in on ? { notBefore: inSeconds(on.notBefore) } : on,
    })),
    outOfOrder: review.outOfOrder,
    skipReason: review.ending === "skipped" ? say(review.skipReason) : null,
    reopened: review.reopened.map(({ at, reason }) => ({ at: formatInstant(at), reason })),
    records: review.records.map(({ taken, ...record }) => ({
      ...record,
      taken: taken.map((one) => ({ ...one, at: formatInstant(one.at) })),
    })),
    confirm: review.confirm && {
      by: review.confirm.by,
      text: review.confirm.text,
      given: review.confirm.given && { ...review.confirm.given, at: formatInstant(review.confirm.given.at) },
    },
    notes: review.notes.map(note),
    struck: review.struck.map((one) => struck(one, say)),
  };
}

const amendment = ({ at, pet, changes, finish, margin, seen, ...one }: AmendmentReview, say: Say) => ({
  ...one,
  at: formatInstant(at),
  pet: seconds(pet),
  changes: changes.map(say),
  finish: { before: seconds(finish.before), after: seconds(finish.after) },
  margin: { before: seconds(margin.before), after: seconds(margin.after) },
  seen: seen.map(({ at: seenAt, actor, source }) => ({ at: formatInstant(seenAt), actor, source })),
});

const dropped = ({ entry, planned }: DroppedStep) => ({
  step: entry.step.id,
  number: entry.number,
  task: entry.task.id,
  by: entry.step.by,
  planned: stretch(planned),
});

const note = ({ at, actor, text }: NoteReview) => ({ at: formatInstant(at), actor, text });

const struck = (one: StruckReview, say: Say) => ({
  ...one,
  at: formatInstant(one.at),
  struckAt: formatInstant(one.struckAt),
  reason: say(one.reason),
});

const laneWait = ({ on, time }: WaitTotal) => ({ on, seconds: inSeconds(time) });
