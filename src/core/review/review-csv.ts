import type { Say } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import { causeMessage } from "../course/index.ts";
import type { Duration } from "../units/index.ts";
import { formatInstant, inSeconds, later } from "../units/index.ts";
import { csvOf } from "../workbook/index.ts";
import type { DroppedStep } from "./amendment-review.ts";
import type { Review, StepReview } from "./review.ts";

/** The ending of a step that an amendment took out of the plan. */
const DROPPED = "dropped";

const COLUMNS = [
  "number",
  "step",
  "task",
  "by",
  "action",
  "ending",
  "planned_start_s",
  "planned_finish_s",
  "actual_start_s",
  "actual_finish_s",
  "actual_start_utc",
  "actual_finish_utc",
  "start_difference_s",
  "finish_difference_s",
  "time_difference_s",
  "waited_s",
  "waited_on",
  "out_of_order",
  "reason",
  "records",
  "confirmed_by",
  "notes",
  "struck",
  "delay_share_s",
  "low_s",
  "high_s",
  "in_force_start_s",
  "in_force_finish_s",
  "amended",
] as const;

/**
 * Returns the steps of a review, then those that amendments took out of the plan, as CSV, with times in
 * seconds of PET. The JSON document has every text unchanged. `say` turns messages into text.
 */
export function reviewCsv(review: Review, say: Say): string {
  return csvOf(COLUMNS, [
    ...review.steps.map((step) => row(review, step, say)),
    ...review.dropped.map(droppedRow),
  ]);
}

/**
 * Returns who confirmed a step, or a word that tells a step that asks for no confirmation from one that was done without
 * it. Empty for a step that asks for one and is not done.
 */
function confirmedBy({ confirm, ending }: StepReview, say: Say): string | null {
  if (confirm === null) return say(message("review/csv-not-needed"));
  if (confirm.given) return confirm.given.actor ?? say(message("review/csv-somebody"));
  return ending === "done" ? say(message("review/csv-missing")) : null;
}

type Row = Record<(typeof COLUMNS)[number], string | number | boolean | null>;

const seconds = (duration: Duration | null | undefined) => (duration == null ? null : inSeconds(duration));

function row({ outline, petZero, delay }: Review, step: StepReview, say: Say): Row {
  const entry = outline.step(step.step);
  const { planned, actual } = step;
  const share = delay.find((one) => one.step === step.step);
  const instant = (pet: Duration | undefined) =>
    pet === undefined || petZero === null ? null : formatInstant(later(petZero, pet));
  return {
    number: entry?.number ?? null,
    step: entry?.step.id ?? null,
    task: entry?.task.id ?? null,
    by: (entry?.step.by ?? []).join(" "),
    action: entry?.step.do ?? null,
    ending: step.ending,
    planned_start_s: seconds(planned?.start),
    planned_finish_s: seconds(planned?.finish),
    actual_start_s: seconds(actual?.start),
    actual_finish_s: seconds(actual?.finish),
    actual_start_utc: instant(actual?.start),
    actual_finish_utc: instant(actual?.finish),
    start_difference_s: seconds(step.startDifference),
    finish_difference_s: seconds(step.finishDifference),
    time_difference_s: seconds(step.timeDifference),
    waited_s:
      step.waits.length === 0
        ? null
        : inSeconds(step.waits.reduce((sum, { from, to }) => sum + to - from, 0)),
    waited_on: step.waits
      .map(({ crew, from, to, on }) =>
        say(
          message("review/csv-waited", {
            crew,
            seconds: inSeconds(to - from),
            on: causeMessage(outline, on),
          }),
        ),
      )
      .join("; "),
    out_of_order: step.outOfOrder,
    reason: [
      say(step.skipReason),
      ...step.reopened.map(({ reason }) => say(message("review/csv-reopened", { reason }))),
    ]
      .filter(Boolean)
      .join("; "),
    records: step.records
      .flatMap(({ record, unit, taken }) =>
        taken.map(({ value, outOfRange }) => {
          const written = `${record} ${value}${unit === "1" ? "" : ` ${unit}`}`;
          return outOfRange ? say(message("review/csv-out-of-range", { record: written })) : written;
        }),
      )
      .join("; "),
    confirmed_by: confirmedBy(step, say),
    notes: step.notes.map(({ text }) => text).join("; "),
    struck: step.struck.map(({ what, reason }) => (reason ? `${what}: ${say(reason)}` : what)).join("; "),
    delay_share_s: seconds(share?.share),
    low_s: seconds(share?.low),
    high_s: seconds(share?.high),
    in_force_start_s: seconds(step.inForce?.start),
    in_force_finish_s: seconds(step.inForce?.finish),
    amended: step.amended.join("; "),
  };
}

/** The row of a step that an amendment took out of the plan, which has nothing but its plan of record. */
function droppedRow({ entry, planned }: DroppedStep): Partial<Row> {
  const { number, step, task } = entry;
  return {
    number,
    step: step.id,
    task: task.id,
    by: step.by.join(" "),
    action: step.do,
    ending: DROPPED,
    planned_start_s: seconds(planned?.start),
    planned_finish_s: seconds(planned?.finish),
    amended: DROPPED,
  };
}
