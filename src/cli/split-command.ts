import { readLines } from "../core/log/index.ts";
import type { SplitAnswer, SplitCase } from "../core/split/index.ts";
import {
  secondProofMessage,
  splitCase,
  splitChainMessage,
  splitCostMessages,
  splitOf,
  splitVerdict,
  suggestionMessages,
  walkSplitCase,
} from "../core/split/index.ts";
import type { Duration, Instant } from "../core/units/index.ts";
import { readText } from "../io/files/index.ts";
import type { Message } from "../words/index.ts";
import { inWords, words } from "../words/index.ts";
import { documentText } from "./document-text.ts";
import { loadSolver } from "./load-solver.ts";
import { lightFromFile } from "./orbit-file.ts";
import { plainText } from "./plain-text.ts";
import { foldedFile, procedureFile } from "./read-input.ts";
import { inLanguageAsked } from "./speak-as-asked.ts";
import { splitDocument } from "./split-document.ts";
import type { ExitStatus, Terminal } from "./terminal.ts";
import { EXIT } from "./terminal.ts";
import { UnusableInputError } from "./unusable-input-error.ts";

/** The options of `split`. */
export interface SplitArguments {
  /** For a log: the instant from which it is asked. */
  readonly at?: Instant;
  /** For a procedure: the instant of PET 0. */
  readonly start?: Instant;
  readonly orbit?: string;
  readonly tries: number;
  readonly seed: number;
  readonly proof?: boolean;
  readonly json?: boolean;
}

/** How many parts of splits are looked at for a proof: usually a second, and a minute when one is asked for. */
const PARTS = { usual: 50_000, asked: 3_000_000 };

/** After so many nodes of its search a second proof ends. */
const NODES = 20_000;

/** `split`: who should do what, and in which order, for the earliest finish; for a procedure or the rest of a walk. */
export async function splitCommand(
  file: string,
  said: SplitArguments,
  terminal: Terminal,
): Promise<ExitStatus> {
  const isLog = readLines(await readText(file)).entries.length > 0;
  const asked = isLog ? await walkIn(file, said) : await planIn(file, said);
  // A document has the author's texts, and a language that is not there is told of before the search.
  const shown = said.json ? asked : { ...asked, outline: inLanguageAsked(asked.outline) };
  const answer = await answerTo(asked, said);
  terminal.out(said.json ? documentText(() => splitDocument(answer)) : inLines(shown, isLog, answer));
  return answer.status === "no-plan" ? EXIT.findings : EXIT.fine;
}

/** The answer; where a proof is asked for and the first one leaves it open, a second one is tried, and then more of the first. */
async function answerTo(asked: SplitCase, { tries, seed, proof }: SplitArguments): Promise<SplitAnswer> {
  const second = proof ? { solver: await loadSolver(), nodes: NODES } : null;
  const usual = splitOf(asked, { tries, seed, parts: PARTS.usual, second });
  if (!proof || usual.isProven || usual.status === "no-plan") return usual;
  const longer = splitOf(asked, { tries, seed, parts: PARTS.asked });
  return longer.isProven || isBefore(longer.finish, usual.finish) ? longer : usual;
}

const isBefore = (one: Duration | null, other: Duration | null) =>
  one !== null && other !== null && one < other;

async function planIn(file: string, said: SplitArguments): Promise<SplitCase> {
  const { outline, read } = await procedureFile(file);
  if (said.at !== undefined) throw new UnusableInputError(words("cli/fit-at-needs-log"));
  const light = await lightFromFile(said.orbit, said.start);
  if (!read.file) throw new NoFileError();
  return splitCase({ file: read.file, outline }, { start: said.start ?? null, light });
}

async function walkIn(file: string, said: SplitArguments): Promise<SplitCase> {
  if (said.start !== undefined || said.orbit !== undefined) {
    throw new UnusableInputError(words("cli/fit-log-has-start"));
  }
  const { folded, ledger } = await foldedFile(file, said.at);
  return walkSplitCase(ledger, said.at ?? folded.lastAt ?? ledger.opened.at);
}

/** A procedure that was read has a file: that it has none is a mistake of our own. */
class NoFileError extends Error {}

const line = (message: Message) => `${plainText(inWords(message))}\n`;

function inLines({ outline, now }: SplitCase, isLog: boolean, answer: SplitAnswer): string {
  const { suggestions, cost, before, tried, looked, second } = answer;
  const chain = splitChainMessage(outline, answer);
  return [
    `${plainText(outline.procedure.title)}\n`,
    isLog ? `${words("split/as-of", { now })}\n` : "",
    before === null ? "" : `${words("split/now", { finish: before })}\n`,
    `\n${line(splitVerdict(answer))}`,
    chain ? line(chain) : "",
    suggestions.length === 0 ? "" : "\n",
    ...suggestions.map(
      (one) => `  ${plainText(words("cli/split-change", suggestionMessages(outline, one)))}\n`,
    ),
    cost
      ? `\n${words("split/cost")}\n${splitCostMessages(outline, cost)
          .map((one) => `  ${line(one)}`)
          .join("")}`
      : "",
    before === null ? "" : `\n${words("cli/split-tried", { tried, looked })}\n`,
    second ? line(secondProofMessage(second)) : "",
    `${words("cli/split-how")}\n${words("cli/caution")}\n`,
  ].join("");
}
