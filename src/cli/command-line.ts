import { Command, CommanderError } from "commander";
import { UnusableFileError } from "../io/files/index.ts";
import { english, englishWords } from "../words/english/index.ts";
import { speak, words } from "../words/index.ts";
import { addHub } from "./hub-commands.ts";
import { addPlanning } from "./planning-commands.ts";
import { programVersion } from "./program-version.ts";
import { UnusableProcedureError } from "./read-input.ts";
import { addRevising } from "./revising-commands.ts";
import { type SchemaArguments, schemaCommand } from "./schema-command.ts";
import { speakAsAsked } from "./speak-as-asked.ts";
import type { Ended, Surroundings } from "./surroundings.ts";
import { tellAsAsked } from "./tell-as-asked.ts";
import type { ExitStatus, Terminal } from "./terminal.ts";
import { EXIT } from "./terminal.ts";
import { UnusableInputError } from "./unusable-input-error.ts";
import { addWalks } from "./walk-commands.ts";

/**
 * Runs the program with its arguments (without the names of node and the script) and returns the exit status. Bad input
 * never throws: it gives one sentence on `err`.
 */
export async function runCommandLine(
  args: readonly string[],
  surroundings: Surroundings,
): Promise<ExitStatus> {
  speak(english, englishWords);
  const { terminal } = surroundings;
  let status: ExitStatus = EXIT.fine;
  try {
    await speakAsAsked(args);
    tellAsAsked(args);
    const program = programFor(surroundings, (ended) => {
      status = ended;
    });
    await program.parseAsync([...args], { from: "user" });
    return status;
  } catch (error) {
    if (error instanceof CommanderError) return ofCommander(error, terminal);
    if (error instanceof UnusableInputError || error instanceof UnusableFileError) {
      terminal.err(`${error.message}\n`);
      return error instanceof UnusableProcedureError ? error.status : EXIT.unusable;
    }
    throw error;
  }
}

function ofCommander(error: CommanderError, terminal: Terminal): ExitStatus {
  if (error.exitCode === 0) return EXIT.fine;
  const message = error.code === "commander.help" ? words("cli/say-what") : sentenceOf(error.message);
  terminal.err(`${message}\n`);
  return EXIT.unusable;
}

/** Turns Commander's `error: unknown option '--x'`, which may have a hint on a second line, into one sentence. */
function sentenceOf(message: string): string {
  const text = message
    .replace(/^error: /, "")
    .replaceAll(/\s+/g, " ")
    .replace(/^option '(-\S+)[^']*' argument '(.*)' is invalid\. (.)/, (_, option, value, first: string) => {
      return `${option} "${value}": ${first.toLowerCase()}`;
    })
    .replace(/\. Expected/, ": expected")
    .trim();
  const sentence = text.charAt(0).toUpperCase() + text.slice(1);
  return /[.?!)]$/.test(sentence) ? sentence : `${sentence}.`;
}

function programFor(surroundings: Surroundings, ended: Ended): Command {
  const { terminal } = surroundings;
  const program = new Command("tetherline")
    .description(words("help/program"))
    .option("--lang <language>", words("help/lang"))
    .option("--texts <language>", words("help/texts"))
    .option("--units <system>", words("help/units"))
    .option("--utc <style>", words("help/utc"))
    .version(programVersion(), "--version", words("help/version"))
    .exitOverride()
    .configureOutput({
      writeOut: (text) => terminal.out(text),
      // The error is written as one sentence elsewhere, so Commander must not print it too.
      writeErr: () => {},
    });
  addPlanning(program, surroundings, ended);
  addRevising(program, surroundings, ended);
  addWalks(program, surroundings, ended);
  addHub(program, surroundings, ended);
  program
    .command("schema")
    .description(words("help/schema"))
    .option("--surprises", words("help/schema-surprises"))
    .option("--fragment", words("help/schema-fragment"))
    .action((which: SchemaArguments) => schemaCommand(which, terminal));
  return program;
}
