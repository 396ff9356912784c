import type { Learned, LearnedStep, WalkRecord } from "../core/learn/index.ts";
import { learnFrom, offeredTime, offerMessage } from "../core/learn/index.ts";
import type { Outline, StepTime } from "../core/procedure/index.ts";
import type { Duration, StepId } from "../core/units/index.ts";
import { clockText } from "../core/units/index.ts";
import type { ForecastScores } from "../core/walks-compared/index.ts";
import { forecastScores, forecastsOf } from "../core/walks-compared/index.ts";
import { inWords, words } from "../words/index.ts";
import { documentText } from "./document-text.ts";
import { forecastLines } from "./forecast-lines.ts";
import { learnDocument } from "./learn-document.ts";
import { plainText } from "./plain-text.ts";
import type { ExitStatus, Terminal } from "./terminal.ts";
import { textTable } from "./text-table.ts";
import { UnusableInputError } from "./unusable-input-error.ts";
import { walkLogs } from "./walk-logs.ts";

/** The options of `learn`. */
export interface LearnArguments {
  readonly procedure?: string;
  /** Each `old=new`. */
  readonly renamed: readonly string[];
  readonly json?: boolean;
}

/** `learn`: what walks tell of how long steps take, and what could be planned instead. Nothing is changed. */
export async function learnCommand(
  files: readonly string[],
  { procedure, renamed, json = false }: LearnArguments,
  terminal: Terminal,
): Promise<ExitStatus> {
  const { records, outline, status } = await walkLogs(files, procedure, terminal);
  const learned = learnFrom(records, outline, renamedSteps(outline, renamed));
  const scores = forecastScores(records.map(forecastsOf));
  terminal.out(
    json ? documentText(() => learnDocument(records, learned, scores)) : inLines(records, learned, scores),
  );
  return status;
}

function renamedSteps(outline: Outline, said: readonly string[]): ReadonlyMap<StepId, StepId> {
  return new Map(
    said.map((one): [StepId, StepId] => {
      const [from = "", to = ""] = one.split("=");
      if (!outline.step(to)) {
        const known = { step: plainText(to), procedure: plainText(outline.procedure.id) };
        throw new UnusableInputError(words("cli/not-renamed", known));
      }
      return [from as StepId, to as StepId];
    }),
  );
}

const three = (low: Duration, middle: Duration, high: Duration) =>
  words("cli/three-times", {
    low: clockText(low, "up"),
    middle: clockText(middle, "up"),
    high: clockText(high, "up"),
  });

const ofTime = ({ low, likely, high }: StepTime) => three(low, likely, high);

const ofMinutes = (minutes: number) => (minutes * 60_000) as Duration;

function inLines(records: readonly WalkRecord[], learned: Learned, scores: ForecastScores): string {
  const live = records.filter(({ ledger }) => ledger.opened.mode === "live").length;
  const { learning, unmatched, inOneGo } = learned;
  const reasons = reasonsOf(learned.steps);
  return [
    `${plainText(learned.outline.procedure.title)}\n`,
    `${words("cli/walks-told", { live, rehearsed: records.length - live })}\n\n`,
    stepsTable(learned.steps, reasons),
    ...[...reasons].map(([reason, letter]) => `${letter}  ${reason}\n`),
    `\n${
      learning?.isClaimed
        ? words("cli/learning", {
            rate: Math.round(learning.rate * 100),
            slope: learning.slope,
            error: learning.standardError,
            walks: learning.walks,
          })
        : words("cli/no-learning")
    }\n`,
    inOneGo > 0 ? `${words("cli/in-one-go", { count: inOneGo })}\n` : "",
    unmatched.length > 0
      ? `${words("cli/unmatched", {
          count: unmatched.length,
          steps: [...new Set(unmatched.map(({ entry }) => plainText(entry.step.id)))],
        })}\n`
      : "",
    ...forecastLines(scores),
    `\n${words("cli/learn-how")}\n${words("cli/caution")}\n`,
  ].join("");
}

const reasonOf = (step: LearnedStep): string => plainText(inWords(offerMessage(step)));

/** The sentences that tell why times are offered or not, each with the letter that stands for it in the table: many steps have the same one. */
const reasonsOf = (steps: readonly LearnedStep[]): ReadonlyMap<string, string> =>
  new Map([...new Set(steps.map(reasonOf))].map((reason, place) => [reason, (place + 10).toString(36)]));

function stepsTable(steps: readonly LearnedStep[], reasons: ReadonlyMap<string, string>): string {
  return textTable(
    [
      { heading: words("cli/column-number"), figures: true },
      { heading: words("cli/column-step") },
      { heading: words("cli/column-walks"), figures: true },
      { heading: words("cli/column-weight") },
      { heading: words("cli/column-planned-times"), figures: true },
      { heading: words("cli/column-band"), figures: true },
      { heading: words("cli/column-offer"), figures: true },
      { heading: words("cli/column-why") },
    ],
    steps.map((step) => [
      step.entry.number,
      plainText(step.entry.step.id),
      String(step.observations.length),
      words(step.isThin ? "cli/thin" : "cli/weight", { weight: step.weight }),
      ofTime(step.planned),
      three(ofMinutes(step.band.p10), ofMinutes(step.band.p50), ofMinutes(step.band.p90)),
      step.offer === "offered" ? ofTime(offeredTime(step.moved)) : "",
      reasons.get(reasonOf(step)) ?? "",
    ]),
  );
}
