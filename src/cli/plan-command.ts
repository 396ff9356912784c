import type { CourseStep, Wait } from "../core/course/index.ts";
import { waitsBefore } from "../core/course/index.ts";
import type { Plan, Timeline } from "../core/plan/index.ts";
import { planOf } from "../core/plan/index.ts";
import { hasErrors } from "../core/procedure/index.ts";
import type { Instant } from "../core/units/index.ts";
import { clockText, formatInstant, lengthText, minus, ofSeconds } from "../core/units/index.ts";
import { outcomesFrom } from "./argument-values.ts";
import { lightFromFile } from "./orbit-file.ts";
import { counted, plainText, shortText } from "./plain-text.ts";
import { planDocument } from "./plan-document.ts";
import { findingSentence, procedureFile } from "./read-input.ts";
import type { RiskDocument } from "./risk-document.ts";
import { riskDocument } from "./risk-document.ts";
import type { ExitStatus, Terminal } from "./terminal.ts";
import { CAUTION, EXIT } from "./terminal.ts";
import { textTable } from "./text-table.ts";

/** What `plan` can be asked with. */
export interface PlanArguments {
  readonly start?: Instant;
  readonly decide: readonly string[];
  readonly getAheads?: boolean;
  readonly orbit?: string;
  /** How many times durations are sampled. */
  readonly samples: number;
  readonly seed: number;
  readonly json?: boolean;
}

/** `plan`: earliest and latest times of every step, waits and the critical path. */
export async function planCommand(
  file: string,
  { start, decide, getAheads = false, orbit, samples, seed, json = false }: PlanArguments,
  terminal: Terminal,
): Promise<ExitStatus> {
  const { outline, read } = await procedureFile(file);
  const outcomes = outcomesFrom(outline, decide);
  const light = await lightFromFile(orbit, start);
  const plan = planOf(outline, { outcomes, start: start ?? null, light, getAheads });
  const risk = riskDocument(plan, samples, seed);
  const document = { ...planDocument(plan), risk };
  terminal.out(json ? `${JSON.stringify(document, null, 2)}\n` : inWords(plan, risk));
  for (const one of read.locate(plan.findings)) {
    terminal.err(`${file}: ${one.level} ${findingSentence(one)}\n`);
  }
  return hasErrors(plan.findings) ? EXIT.findings : EXIT.fine;
}

function inWords(plan: Plan, risk: RiskDocument | null): string {
  const { outline, timeline, margin, start } = plan;
  const { title, id, revision } = outline.procedure;
  const head = `${plainText(title)} (${id}${revision ? `, revision ${plainText(revision)}` : ""})\n`;
  if (!timeline) return `${head}No plan can be made.\n\n${CAUTION}\n`;
  const { course } = timeline;
  const steps = [...course.steps.values()];
  const facts = [
    start === null ? "PET 0 at no given instant" : `PET 0 at ${formatInstant(start)}`,
    counted(steps.length, "step"),
    `finish ${clockText(course.finish)}`,
    ...(margin === null ? [] : [`${lengthText(margin)} ${margin < 0 ? "over" : "within"} the elapsed limit`]),
  ];
  const table = textTable(
    [
      { heading: "No.", figures: true },
      { heading: "Start", figures: true },
      { heading: "Finish", figures: true },
      { heading: "Slack", figures: true },
      { heading: "By" },
      { heading: "Step" },
      { heading: "Action" },
      { heading: "Waits" },
    ],
    steps.map((step) => row(timeline, step)),
  );
  const path = timeline.criticalPath.flatMap((step) => outline.step(step)?.number ?? []);
  return `${head}${facts.join(", ")}\n\n${table}\nCritical path: ${path.join(" → ") || "none"}\n${riskWords(risk)}\n${CAUTION}\n`;
}

function riskWords(risk: RiskDocument | null): string {
  if (!risk) return "";
  const clock = (time: number | null) => (time === null ? "none" : clockText(ofSeconds(time)));
  const percent = (share: number) => `${(share * 100).toFixed(1)} %`;
  const within = risk.withinLimit === null ? "" : `, within the limit in ${percent(risk.withinLimit)}`;
  const often = Object.entries(risk.criticality)
    .sort(([, a], [, b]) => b - a)
    .filter(([, share]) => share > 0)
    .slice(0, 10)
    .map(([id, share]) => `${id} ${percent(share)}`);
  const movers = Object.entries(risk.influence)
    .sort(([, a], [, b]) => b - a)
    .filter(([, correlation]) => correlation > 0.1)
    .slice(0, 3)
    .map(([id, correlation]) => `${id} ${correlation.toFixed(2)}`);
  return [
    `Finish in ${counted(risk.samples, "sample")} (seed ${risk.seed}): mean ${clock(risk.mean)}, `,
    `10 % by ${clock(risk.p10)}, half by ${clock(risk.p50)}, 90 % by ${clock(risk.p90)}${within}\n`,
    movers.length > 0 ? `The finish moves most with ${movers.join(", ")} (rank correlation)\n` : "",
    risk.unfit > 0 ? `A step missed its windows in ${percent(risk.unfit)}\n` : "",
    often.length > 0 ? `Most often critical: ${often.join(", ")}\n` : "",
  ].join("");
}

function row({ course, slack }: Timeline, planned: CourseStep): string[] {
  const { outline } = course;
  const entry = outline.step(planned.step);
  const late = slack.get(planned.step);
  const callOf = (crew: string) => plainText(outline.crew[outline.lane(crew)]?.call ?? crew);
  const waitOnWords = (on: Wait["on"]) => {
    if (on === null) return "no reason";
    if ("crew" in on) return on.crew.map(callOf).join(" and ");
    if ("window" in on) return `window ${on.window}`;
    return "lag" in on ? `the lag after ${on.lag}` : "a hold";
  };
  const waits = waitsBefore(course, planned.step).map(
    ({ crew, from, to, on }) => `${callOf(crew)} ${lengthText(minus(to, from))} for ${waitOnWords(on)}`,
  );
  return [
    entry?.number ?? "",
    clockText(planned.start),
    clockText(planned.finish),
    !late || late.critical ? "critical" : clockText(late.slack),
    (entry?.step.by ?? []).map(callOf).join(" + "),
    entry?.step.id ?? "",
    shortText(entry?.step.do ?? "", 48),
    waits.join("; "),
  ];
}
