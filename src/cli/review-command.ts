import type { Entry } from "../core/log/index.ts";
import type { LaneReview, RecordKnown, Review, StepReview, TaskReview } from "../core/review/index.ts";
import { reviewCsv, reviewDocument, reviewOf, reviewXes } from "../core/review/index.ts";
import { sealFitsBy, verifyLog } from "../core/seal/index.ts";
import type { Duration } from "../core/units/index.ts";
import { clockText } from "../core/units/index.ts";
import type { MessageKey } from "../words/index.ts";
import { forMachines, inWords, words } from "../words/index.ts";
import { amendmentLines } from "./amendment-lines.ts";
import { documentText } from "./document-text.ts";
import { machineFits } from "./machine-fits.ts";
import { plainText, shortText } from "./plain-text.ts";
import { foldedFile, reportUncleanLog } from "./read-input.ts";
import { ledgerAsked } from "./speak-as-asked.ts";
import { surpriseLines } from "./surprise-lines.ts";
import type { ExitStatus, Terminal } from "./terminal.ts";
import { textTable } from "./text-table.ts";
import { trustedKeys } from "./trusted-keys.ts";
import { UnusableInputError } from "./unusable-input-error.ts";
import { waitText } from "./wait-text.ts";

/** The forms in which a review can be printed. Without any, it is printed as tables. */
export interface ReviewArguments {
  readonly json?: boolean;
  readonly csv?: boolean;
  readonly xes?: boolean;
  /** Keys of hubs that are trusted, as they show them. */
  readonly trust?: readonly string[];
}

/** `review`: compares what was done with what was planned, up to the last entry of the log. */
export async function reviewCommand(
  file: string,
  { json = false, csv = false, xes = false, trust = [] }: ReviewArguments,
  terminal: Terminal,
): Promise<ExitStatus> {
  if ([json, csv, xes].filter(Boolean).length > 1) {
    throw new UnusableInputError(words("cli/one-form"));
  }
  const keys = trustedKeys(trust);
  const log = await foldedFile(file);
  const at = log.folded.lastAt ?? log.ledger.opened.at;
  const review = reviewOf(log.folded, at);
  if (!review) throw new UnusableInputError(words("cli/no-walk", { file }));
  if (json) terminal.out(documentText(() => reviewDocument(review, inWords, recordOf(log.entries, keys))));
  else if (csv) terminal.out(forMachines(() => reviewCsv(review, inWords)));
  else if (xes) terminal.out(reviewXes(review, recordOf(log.entries, keys)));
  else terminal.out(inTables(reviewOf({ ...log.folded, ledger: ledgerAsked(log.ledger) }, at) ?? review));
  return reportUncleanLog(file, log, terminal);
}

/** What the entries of a log come to as a record. Every seal is looked at. */
function recordOf(entries: readonly Entry[], trust: readonly string[]): RecordKnown {
  const found = verifyLog(entries, trust, { fits: sealFitsBy(machineFits) });
  return found ? { found, trust } : { found: null, why: "failed" };
}

const signed = (difference: Duration | null) =>
  difference === null ? "" : difference < 0 ? clockText(difference) : `+${clockText(difference)}`;
const clock = (pet: Duration | null | undefined) => (pet == null ? "" : clockText(pet));
const section = (heading: string, body: string) => (body ? `\n${heading}\n\n${body}` : "");

function inTables(review: Review): string {
  const { outline, opened, end } = review;
  const ended = endWords(end);
  const finish =
    review.actualFinish === null
      ? words("cli/no-step-complete")
      : words("cli/last-step", {
          at: review.actualFinish,
          planned: clock(review.plannedFinish),
          difference: signed(review.finishDifference),
        });
  const margin =
    review.limit === null || review.margin === null
      ? ""
      : ` ${words(review.margin < 0 ? "cli/limit-over" : "cli/limit-left", {
          limit: review.limit,
          margin: review.margin,
        })}`;
  const lines = (texts: readonly string[]) => texts.map((text) => `  ${plainText(text)}\n`).join("");
  return [
    `${words("cli/review-title", {
      title: plainText(outline.procedure.title),
      walk: plainText(opened.walk),
      mode: words(`cli/mode-${opened.mode}`),
      ended,
    })}\n`,
    `${finish}${margin}\n`,
    section(words("cli/lanes"), lanesTable(review)),
    section(words("cli/tasks"), tasksTable(review)),
    section(words("cli/steps-title"), stepsTable(review)),
    section(
      words("cli/amendments"),
      amendmentLines(review.amendments)
        .map((line) => `  ${line}\n`)
        .join(""),
    ),
    section(
      words("cli/holds"),
      lines(
        review.holds.map(({ start, finish: lifted, reason }) =>
          words("cli/hold", { from: start, until: lifted, reason }),
        ),
      ),
    ),
    section(
      words("cli/deviations"),
      lines(
        review.deviations.map(
          ({ kind, step, text }) => `${words(`cli/kind-${kind}`)} ${step ?? ""}: ${inWords(text)}`,
        ),
      ),
    ),
    section(
      words("cli/surprises"),
      surpriseLines(outline, review.surprises)
        .map((line) => `  ${line}\n`)
        .join(""),
    ),
    section(words("cli/notes"), lines(review.notes.map(({ text }) => text))),
  ].join("");
}

function endWords(end: Review["end"]): string {
  if (!end) return words("cli/not-closed");
  const ended = { end: words(`cli/end-${end.end}`), pet: end.at };
  return end.reason
    ? words("cli/ended-reason", { ...ended, reason: plainText(inWords(end.reason)) })
    : words("cli/ended-at", ended);
}

function lanesTable({ outline, lanes }: Review): string {
  const time = { figures: true };
  return textTable(
    [
      { heading: words("cli/column-crew") },
      { heading: words("cli/column-worked"), ...time },
      { heading: words("cli/column-translated"), ...time },
      { heading: words("cli/column-waited"), ...time },
      { heading: words("cli/column-idle"), ...time },
      { heading: words("cli/column-done"), ...time },
      { heading: words("cli/column-skipped"), ...time },
      { heading: words("cli/column-waited-on") },
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
  typeof on === "string"
    ? words(`cli/waited-${on}`)
    : words("cli/waited-crew", { crew: on.crew.map((crew) => callOf(outline, crew)) });

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
      { heading: words("cli/column-task") },
      figures("cli/column-planned"),
      figures("cli/column-began"),
      figures("cli/column-later"),
      figures("cli/column-planned-for"),
      figures("cli/column-took"),
      figures("cli/column-longer"),
      figures("cli/column-done"),
    ],
    tasks.map(row),
  );
}

function endingWords({ ending, outOfOrder }: StepReview): string {
  if (ending === "not-performed") return "";
  const ended = words(`cli/ending-${ending}`);
  return outOfOrder ? words("cli/ending-out-of-order", { ending: ended }) : ended;
}

/** A column of numbers under a heading. */
const figures = (heading: Extract<MessageKey, `cli/column-${string}`>) => ({
  heading: words(heading),
  figures: true,
});

function stepsTable({ outline, steps }: Review): string {
  const row = (step: StepReview) => {
    const entry = outline.step(step.step);
    return [
      entry?.number ?? "",
      entry?.step.id ?? "",
      endingWords(step),
      clock(step.planned?.start),
      clock(step.actual?.start),
      clock(step.planned?.finish),
      clock(step.actual?.finish),
      signed(step.finishDifference),
      signed(step.timeDifference),
      step.waits.map((wait) => waitText(outline, wait)).join("; "),
    ];
  };
  return textTable(
    [
      figures("cli/column-number"),
      { heading: words("cli/column-step") },
      { heading: words("cli/column-ending") },
      figures("cli/column-planned"),
      figures("cli/column-began"),
      figures("cli/column-planned-to"),
      figures("cli/column-over-at"),
      figures("cli/column-later"),
      figures("cli/column-longer"),
      { heading: words("cli/column-waits") },
    ],
    steps.filter(({ ending }) => ending !== "not-performed").map(row),
  );
}
