import type { LaneReview, Review, StepReview, TaskReview } from "../core/review/index.ts";
import { reviewCsv, reviewDocument, reviewOf, reviewXes, waitWords } from "../core/review/index.ts";
import type { Duration } from "../core/units/index.ts";
import { clockText, lengthText, minus } from "../core/units/index.ts";
import { plainText, shortText } from "./plain-text.ts";
import { foldedFile, reportUncleanLog } from "./read-input.ts";
import type { ExitStatus, Terminal } from "./terminal.ts";
import { textTable } from "./text-table.ts";
import { UnusableInputError } from "./unusable-input-error.ts";

/** The forms a review can be printed in; none asked for means tables to read. */
export interface ReviewArguments {
  readonly json?: boolean;
  readonly csv?: boolean;
  readonly xes?: boolean;
}

/** `review`: what was done against what was planned, up to the last entry of the log. */
export async function reviewCommand(
  file: string,
  { json = false, csv = false, xes = false }: ReviewArguments,
  terminal: Terminal,
): Promise<ExitStatus> {
  if ([json, csv, xes].filter(Boolean).length > 1) {
    throw new UnusableInputError("Ask for one form of the review: --json, --csv or --xes.");
  }
  const log = await foldedFile(file);
  const review = reviewOf(log.folded, log.folded.lastAt ?? log.ledger.opened.at);
  if (!review) throw new UnusableInputError(`${file}: no entry opens a walk.`);
  if (json) terminal.out(`${JSON.stringify(reviewDocument(review), null, 2)}\n`);
  else if (csv) terminal.out(reviewCsv(review));
  else if (xes) terminal.out(reviewXes(review));
  else terminal.out(inWords(review));
  return reportUncleanLog(file, log, terminal);
}

const signed = (difference: Duration | null) =>
  difference === null ? "" : difference < 0 ? clockText(difference) : `+${clockText(difference)}`;
const clock = (pet: Duration | null | undefined) => (pet == null ? "" : clockText(pet));
const section = (heading: string, body: string) => (body ? `\n${heading}\n\n${body}` : "");

function inWords(review: Review): string {
  const { outline, opened, end } = review;
  const ended = end
    ? `${end.end} at PET ${clockText(end.at)}${end.reason ? ` (${plainText(end.reason)})` : ""}`
    : "not closed yet";
  const finish =
    review.actualFinish === null
      ? "No step is complete."
      : `Last step complete at PET ${clockText(review.actualFinish)}, planned ${clock(review.plannedFinish)}, difference ${signed(review.finishDifference)}.`;
  const margin =
    review.limit === null || review.margin === null
      ? ""
      : ` Limit ${clockText(review.limit)}, ${lengthText(review.margin)} ${review.margin < 0 ? "over" : "left"}.`;
  const lines = (texts: readonly string[]) => texts.map((text) => `  ${plainText(text)}\n`).join("");
  return [
    `${plainText(outline.procedure.title)}, walk ${plainText(opened.walk)} (${opened.mode}): ${ended}\n`,
    `${finish}${margin}\n`,
    section("Lanes", lanesTable(review)),
    section("Tasks", tasksTable(review)),
    section("Steps", stepsTable(review)),
    section(
      "Holds",
      lines(
        review.holds.map(
          ({ start, finish: lifted, reason }) => `${clockText(start)} to ${clockText(lifted)} ${reason}`,
        ),
      ),
    ),
    section(
      "Deviations",
      lines(review.deviations.map(({ kind, step, text }) => `${kind} ${step ?? ""}: ${text}`)),
    ),
    section("Notes", lines(review.notes.map(({ text }) => text))),
  ].join("");
}

function lanesTable({ outline, lanes }: Review): string {
  const time = { figures: true };
  return textTable(
    [
      { heading: "Crew" },
      { heading: "Worked", ...time },
      { heading: "Translated", ...time },
      { heading: "Waited", ...time },
      { heading: "Idle", ...time },
      { heading: "Done", ...time },
      { heading: "Skipped", ...time },
      { heading: "Waited on" },
    ],
    lanes.map((lane) => [
      callOf(outline, lane.crew),
      clockText(lane.worked),
      clockText(lane.translated),
      clockText(lane.waited.reduce((sum, one) => sum + one.time, 0) as Duration),
      clockText(lane.idle),
      String(lane.done),
      String(lane.skipped),
      lane.waited.map((wait) => `${laneWaitWords(outline, wait)} ${clockText(wait.time)}`).join("; "),
    ]),
  );
}

type ReviewOutline = Review["outline"];

const callOf = (outline: ReviewOutline, crew: string) =>
  plainText(outline.crew[outline.lane(crew)]?.call ?? crew);

const laneWaitWords = (outline: ReviewOutline, { on }: LaneReview["waited"][number]) =>
  typeof on === "string" ? on : on.crew.map((crew) => callOf(outline, crew)).join(" and ");

function tasksTable({ tasks }: Review): string {
  const row = ({ title, planned, actual, startDifference, timeDifference, done, of }: TaskReview) => [
    shortText(title, 40),
    clock(planned?.start),
    clock(actual?.start),
    signed(startDifference),
    planned ? clockText((planned.finish - planned.start) as Duration) : "",
    actual ? clockText((actual.finish - actual.start) as Duration) : "",
    signed(timeDifference),
    `${done}/${of}`,
  ];
  return textTable(
    [
      { heading: "Task" },
      ...["Planned", "Began", "Later", "Planned for", "Took", "Longer", "Done"].map((heading) => ({
        heading,
        figures: true,
      })),
    ],
    tasks.map(row),
  );
}

function stepsTable({ outline, steps }: Review): string {
  const row = (step: StepReview) => {
    const entry = outline.step(step.step);
    return [
      entry?.number ?? "",
      entry?.step.id ?? "",
      step.outOfOrder ? `${step.ending}, out of order` : step.ending,
      clock(step.planned?.start),
      clock(step.actual?.start),
      clock(step.planned?.finish),
      clock(step.actual?.finish),
      signed(step.finishDifference),
      signed(step.timeDifference),
      step.waits
        .map(
          ({ crew, from, to, on }) =>
            `${callOf(outline, crew)} ${lengthText(minus(to, from))} for ${plainText(waitWords(outline, on))}`,
        )
        .join("; "),
    ];
  };
  const figures = (heading: string) => ({ heading, figures: true });
  return textTable(
    [
      figures("No."),
      { heading: "Step" },
      { heading: "Ending" },
      figures("Planned"),
      figures("Began"),
      figures("Planned to"),
      figures("Over at"),
      figures("Later"),
      figures("Longer"),
      { heading: "Waits" },
    ],
    steps.filter(({ ending }) => ending !== "not-performed").map(row),
  );
}
