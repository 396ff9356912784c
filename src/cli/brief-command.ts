import type { Briefing, BriefingKind } from "../core/briefing/index.ts";
import { briefingFile, briefingOf } from "../core/briefing/index.ts";
import { readLines } from "../core/log/index.ts";
import { planOf } from "../core/plan/index.ts";
import type { Instant } from "../core/units/index.ts";
import { flownCourseOf } from "../core/walk/index.ts";
import { readText, writeText } from "../io/files/index.ts";
import { inWords, words } from "../words/index.ts";
import { lightFromFile } from "./orbit-file.ts";
import { findingSentence, foldedFile, procedureFile, reportUncleanLog } from "./read-input.ts";
import { inLanguageAsked, ledgerAsked } from "./speak-as-asked.ts";
import type { ExitStatus, Terminal } from "./terminal.ts";
import { EXIT } from "./terminal.ts";
import { UnusableInputError } from "./unusable-input-error.ts";

/** The options of `brief`. */
export interface BriefArguments {
  /** The file to write. */
  readonly html: string;
  /** For a procedure: the instant of PET 0. */
  readonly start?: Instant;
  readonly orbit?: string;
}

/** `brief`: writes the briefing of a procedure as planned, or of a walk as flown, as one HTML file. */
export async function briefCommand(
  file: string,
  said: BriefArguments,
  terminal: Terminal,
): Promise<ExitStatus> {
  const isLog = readLines(await readText(file)).entries.length > 0;
  return isLog ? briefWalk(file, said, terminal) : briefPlan(file, said, terminal);
}

async function briefPlan(
  file: string,
  { html, start, orbit }: BriefArguments,
  terminal: Terminal,
): Promise<ExitStatus> {
  const { outline, read } = await procedureFile(file);
  const light = await lightFromFile(orbit, start);
  const plan = planOf(inLanguageAsked(outline), { start: start ?? null, light });
  for (const one of read.locate(plan.findings)) {
    terminal.err(`${words(`cli/of-finding-${one.level}`, { file, finding: findingSentence(one) })}\n`);
  }
  if (!plan.timeline) {
    terminal.err(`${words("cli/brief-no-plan", { file })}\n`);
    return EXIT.findings;
  }
  await write(briefingOf(plan.timeline.course, start ?? null), "plan", html, terminal);
  return plan.findings.some(({ level }) => level === "error") ? EXIT.findings : EXIT.fine;
}

async function briefWalk(
  file: string,
  { html, start, orbit }: BriefArguments,
  terminal: Terminal,
): Promise<ExitStatus> {
  if (start !== undefined || orbit !== undefined) {
    throw new UnusableInputError(words("cli/brief-log-has-start"));
  }
  const log = await foldedFile(file);
  const { folded, ledger } = log;
  const course = flownCourseOf(ledgerAsked(ledger), folded.lastAt ?? ledger.opened.at);
  if (course.steps.size === 0) {
    terminal.err(`${words("cli/brief-nothing-done", { file })}\n`);
    return EXIT.findings;
  }
  const kind = ledger.opened.mode === "rehearsal" ? "rehearsal" : "flown";
  await write(briefingOf(course, ledger.petZero), kind, html, terminal);
  return reportUncleanLog(file, log, terminal);
}

async function write(
  briefing: Briefing,
  kind: BriefingKind,
  html: string,
  terminal: Terminal,
): Promise<void> {
  const written = briefingFile(briefing, kind, inWords);
  await writeText(html, written);
  terminal.err(`${words("cli/written", { file: html, bytes: Buffer.byteLength(written) })}\n`);
}
