import { readLines } from "../core/log/index.ts";
import { chosenBy, extractOf, writeExtract } from "../core/seal/index.ts";
import { readText, writeText } from "../io/files/index.ts";
import { words } from "../words/index.ts";
import type { ExitStatus, Terminal } from "./terminal.ts";
import { EXIT } from "./terminal.ts";
import { UnusableInputError } from "./unusable-input-error.ts";

/** The options of `extract`. Steps and kinds narrow one another. */
export interface ExtractArguments {
  readonly step: readonly string[];
  readonly kind: readonly string[];
  readonly out: string;
}

/** `extract`: some entries of a log, each with its proof that a hub's checkpoint held it. Nothing is written where there is no proof for all of them. */
export async function extractCommand(
  file: string,
  { step: steps, kind: kinds, out }: ExtractArguments,
  terminal: Terminal,
): Promise<ExitStatus> {
  if (steps.length === 0 && kinds.length === 0) throw new UnusableInputError(words("cli/extract-choose"));
  const { entries } = readLines(await readText(file));
  if (entries.length === 0) throw new UnusableInputError(words("cli/no-entries", { file }));
  const made = extractOf(entries, chosenBy({ steps, kinds }));
  if (made.kind === "made") {
    await writeText(out, writeExtract(made.extract));
    terminal.out(`${words("cli/extract-made", { file: out, chosen: made.chosen, left: made.leftOut })}\n`);
    return EXIT.fine;
  }
  const why =
    made.kind === "behind"
      ? words("cli/extract-behind", { count: made.count })
      : words(made.kind === "no-checkpoint" ? "cli/extract-no-checkpoint" : "cli/extract-nothing", { file });
  terminal.err(`${why}\n`);
  return EXIT.findings;
}
