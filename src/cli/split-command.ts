import type { Outline } from "../core/procedure/index.ts";
import type { SplitAnswer } from "../core/split/index.ts";
import {
  splitCase,
  splitChainMessage,
  splitCostMessages,
  splitOf,
  splitVerdict,
  suggestionMessages,
} from "../core/split/index.ts";
import type { Instant } from "../core/units/index.ts";
import type { Message } from "../words/index.ts";
import { inWords, words } from "../words/index.ts";
import { lightFromFile } from "./orbit-file.ts";
import { plainText } from "./plain-text.ts";
import { procedureFile } from "./read-input.ts";
import { splitDocument } from "./split-document.ts";
import type { ExitStatus, Terminal } from "./terminal.ts";
import { EXIT } from "./terminal.ts";

/** The options of `split`. */
export interface SplitArguments {
  readonly start?: Instant;
  readonly orbit?: string;
  readonly tries: number;
  readonly seed: number;
  readonly proof?: boolean;
  readonly json?: boolean;
}

/** How many parts of splits are looked at for a proof: usually a second, and a minute when one is asked for. */
const PARTS = { usual: 50_000, asked: 3_000_000 };

/** `split`: who should do what, and in which order, for the earliest finish. */
export async function splitCommand(
  file: string,
  said: SplitArguments,
  terminal: Terminal,
): Promise<ExitStatus> {
  const { outline, read } = await procedureFile(file);
  const light = await lightFromFile(said.orbit, said.start);
  if (!read.file) throw new NoFileError();
  const answer = splitOf(splitCase({ file: read.file, outline }, { start: said.start ?? null, light }), {
    tries: said.tries,
    seed: said.seed,
    parts: said.proof ? PARTS.asked : PARTS.usual,
  });
  terminal.out(said.json ? `${JSON.stringify(splitDocument(answer), null, 2)}\n` : inLines(outline, answer));
  return answer.status === "no-plan" ? EXIT.findings : EXIT.fine;
}

/** A procedure that was read has a file: that it has none is a mistake of our own. */
class NoFileError extends Error {}

const line = (message: Message) => `${plainText(inWords(message))}\n`;

function inLines(outline: Outline, answer: SplitAnswer): string {
  const { suggestions, cost, before, tried, looked } = answer;
  const chain = splitChainMessage(outline, answer);
  return [
    `${plainText(outline.procedure.title)}\n`,
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
    `${words("cli/split-how")}\n${words("cli/caution")}\n`,
  ].join("");
}
