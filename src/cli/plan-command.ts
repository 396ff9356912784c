import type { CourseStep } from "../core/course/index.ts";
import { waitsBefore } from "../core/course/index.ts";
import type { Site } from "../core/light/index.ts";
import type { Plan, Timeline } from "../core/plan/index.ts";
import { planOf } from "../core/plan/index.ts";
import { hasErrors } from "../core/procedure/index.ts";
import type { Instant } from "../core/units/index.ts";
import { clockText, ofSeconds } from "../core/units/index.ts";
import { contactMessage } from "../core/window/index.ts";
import { planCsv, planSheets, workbookFile } from "../core/workbook/index.ts";
import { writeBytes } from "../io/files/index.ts";
import { forMachines, inWords, words } from "../words/index.ts";
import { getAheadsFrom, outcomesFrom } from "./argument-values.ts";
import { documentText } from "./document-text.ts";
import { lightFromFile, tellContact } from "./orbit-file.ts";
import { plainText, shortText } from "./plain-text.ts";
import { planDocument } from "./plan-document.ts";
import { findingSentence, procedureFile } from "./read-input.ts";
import type { RiskDocument } from "./risk-document.ts";
import { riskDocument } from "./risk-document.ts";
import { inLanguageAsked } from "./speak-as-asked.ts";
import type { ExitStatus, Terminal } from "./terminal.ts";
import { EXIT } from "./terminal.ts";
import { textTable } from "./text-table.ts";
import { UnusableInputError } from "./unusable-input-error.ts";
import { waitText } from "./wait-text.ts";

/** The options of `plan`. */
export interface PlanArguments {
  readonly start?: Instant;
  readonly decide: readonly string[];
  readonly getAheads?: boolean;
  /** The ids of get-aheads that are planned, besides all or none. */
  readonly getAhead: readonly string[];
  readonly orbit?: string;
  /** Ground sites for the windows of contact. */
  readonly site: readonly Site[];
  /** The number of times that durations are sampled. */
  readonly samples: number;
  readonly seed: number;
  readonly json?: boolean;
  readonly csv?: boolean;
  /** The workbook to write. */
  readonly xlsx?: string;
}

/** `plan`: earliest and latest times of every step, waits and the critical path. */
export async function planCommand(
  file: string,
  said: PlanArguments,
  terminal: Terminal,
): Promise<ExitStatus> {
  const {
    start,
    decide,
    getAheads: all = false,
    getAhead,
    orbit,
    site,
    samples,
    seed,
    json = false,
    csv = false,
  } = said;
  if (json && csv) throw new UnusableInputError(words("cli/one-form-of-two"));
  const { outline: written, read } = await procedureFile(file);
  const outline = json || csv ? written : inLanguageAsked(written);
  const outcomes = outcomesFrom(outline, decide);
  const getAheads = getAheadsFrom(outline, all, getAhead);
  const light = await lightFromFile(orbit, start, site);
  const plan = planOf(outline, { outcomes, start: start ?? null, light, getAheads });
  const findings = read.locate(plan.findings);
  const contact = light && contactMessage(outline.procedure, light);
  const { timeline } = plan;
  if (said.xlsx !== undefined && timeline) {
    const workbook = await workbookFile(forMachines(() => planSheets(plan, timeline, inWords)));
    const bytes = new Uint8Array(await workbook.arrayBuffer());
    await writeBytes(said.xlsx, bytes);
    terminal.err(`${words("cli/written", { file: said.xlsx, bytes: bytes.length })}\n`);
  }
  if (csv) {
    if (timeline) terminal.out(forMachines(() => planCsv(plan, timeline, inWords)));
  } else {
    const risk = riskDocument(plan, samples, seed);
    const document = () => ({
      ...planDocument(plan, findings),
      ...(contact ? { contact: inWords(contact) } : {}),
      risk,
    });
    terminal.out(json ? documentText(document) : planInWords(plan, risk));
  }
  if (!timeline && (csv || said.xlsx !== undefined)) terminal.err(`${words("cli/no-plan")}\n`);
  tellContact(file, outline.procedure, light, terminal);
  for (const one of findings) {
    terminal.err(`${words(`cli/of-finding-${one.level}`, { file, finding: findingSentence(one) })}\n`);
  }
  return hasErrors(plan.findings) ? EXIT.findings : EXIT.fine;
}

function planInWords(plan: Plan, risk: RiskDocument | null): string {
  const { outline, timeline, margin, start } = plan;
  const { id, revision } = outline.procedure;
  const title = plainText(outline.procedure.title);
  const head = revision
    ? words("cli/plan-title-revision", { title, id, revision: plainText(revision) })
    : words("cli/plan-title", { title, id });
  if (!timeline) return `${head}\n${words("cli/no-plan")}\n\n${words("cli/caution")}\n`;
  const { course } = timeline;
  const steps = [...course.steps.values()];
  const facts = [
    start === null ? words("cli/pet-zero-nowhere") : words("cli/pet-zero", { at: start }),
    words("cli/steps", { count: steps.length }),
    words("cli/finish", { finish: course.finish }),
    ...(margin === null ? [] : [words(margin < 0 ? "cli/over-limit" : "cli/within-limit", { time: margin })]),
  ];
  const table = textTable(
    [
      { heading: words("cli/plan-number"), figures: true },
      { heading: words("cli/plan-start"), figures: true },
      { heading: words("cli/plan-finish"), figures: true },
      { heading: words("cli/plan-slack"), figures: true },
      { heading: words("cli/plan-by") },
      { heading: words("cli/plan-step") },
      { heading: words("cli/plan-action") },
      { heading: words("cli/plan-waits") },
    ],
    steps.map((step) => row(timeline, step)),
  );
  const path = timeline.criticalPath.flatMap((step) => outline.step(step)?.number ?? []);
  return [
    `${head}\n${facts.join(", ")}\n\n${table}\n`,
    `${words("cli/critical-path", { steps: path.join(" → ") || words("cli/none") })}\n`,
    `${riskWords(risk)}\n${words("cli/caution")}\n`,
  ].join("");
}

/** How many steps and windows are named of each kind, the most telling first. */
const MOST_NAMED = 5;

/** The greatest shares of a record, as words. */
function sharesIn(shares: Readonly<Record<string, number>>): string[] {
  return Object.entries(shares)
    .sort(([, a], [, b]) => b - a)
    .filter(([, share]) => share > 0)
    .slice(0, MOST_NAMED)
    .map(([name, share]) => words("cli/risk-share", { name, share }));
}

function riskWords(risk: RiskDocument | null): string {
  if (!risk) return "";
  const clock = (time: number | null) =>
    time === null ? words("cli/none") : clockText(ofSeconds(time), "up");
  const { samples, seed, withinLimit } = risk;
  const finish = {
    samples,
    seed,
    mean: clock(risk.mean),
    p10: clock(risk.p10),
    p50: clock(risk.p50),
    p90: clock(risk.p90),
  };
  const movers = Object.entries(risk.influence)
    .sort(([, a], [, b]) => b - a)
    .filter(([, correlation]) => correlation > 0.1)
    .slice(0, 3)
    .map(([id, correlation]) => `${id} ${correlation.toFixed(2)}`);
  return [
    withinLimit === null
      ? words("cli/risk", finish)
      : words("cli/risk-within", { ...finish, within: withinLimit }),
    ...(movers.length > 0 ? [words("cli/risk-movers", { steps: movers.join(", ") })] : []),
    ...(risk.unfit > 0
      ? [
          words("cli/risk-unfit", { share: risk.unfit }),
          words("cli/risk-missed", {
            windows: sharesIn(risk.missed.windows),
            steps: sharesIn(risk.missed.steps),
          }),
        ]
      : []),
    ...brokenWords(risk),
    ...criticalWords(risk),
    words("cli/risk-how"),
  ]
    .map((line) => `${line}\n`)
    .join("");
}

/** The bounds that some samples break, those broken most often first. */
function brokenWords({ broken }: RiskDocument): string[] {
  return broken
    .toSorted((a, b) => b.share - a.share)
    .slice(0, MOST_NAMED)
    .map((one) =>
      "doneBy" in one
        ? words("risk/done-late", { step: one.step, by: ofSeconds(one.doneBy), share: one.share })
        : words("risk/started-late", {
            step: one.step,
            after: one.after,
            within: ofSeconds(one.within),
            share: one.share,
          }),
    );
}

/** At this share of the samples a step is on the critical path nearly always: it is counted, not listed. */
const NEARLY_ALWAYS = 0.95;

/** Which steps are critical at times: they tell where the critical path may go otherwise. */
function criticalWords({ criticality }: RiskDocument): string[] {
  const always = Object.values(criticality).filter((share) => share >= NEARLY_ALWAYS).length;
  const times = sharesIn(
    Object.fromEntries(
      Object.entries(criticality).filter(([, share]) => share < NEARLY_ALWAYS && share >= 0.05),
    ),
  );
  return [
    ...(always > 0 ? [words("cli/risk-always-critical", { count: always })] : []),
    ...(times.length > 0 ? [words("cli/risk-critical", { steps: times })] : []),
  ];
}

function row({ course, slack }: Timeline, planned: CourseStep): string[] {
  const { outline } = course;
  const entry = outline.step(planned.step);
  const late = slack.get(planned.step);
  const callOf = (crew: string) => plainText(outline.crew[outline.lane(crew)]?.call ?? crew);
  const waits = waitsBefore(course, planned.step).map((wait) => waitText(outline, wait));
  return [
    entry?.number ?? "",
    clockText(planned.start),
    clockText(planned.finish, "up"),
    !late || late.critical ? words("cli/critical") : clockText(late.slack),
    (entry?.step.by ?? []).map(callOf).join(" + "),
    entry?.step.id ?? "",
    shortText(entry?.step.do ?? "", 48),
    waits.join("; "),
  ];
}
