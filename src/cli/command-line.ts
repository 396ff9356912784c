import { Command, CommanderError } from "commander";
import { procedureJsonSchema } from "../core/procedure/index.ts";
import type { Instant } from "../core/units/index.ts";
import { UnusableFileError } from "../io/files/index.ts";
import {
  countValue,
  decideValue,
  hoursValue,
  instantValue,
  nameValue,
  paceValue,
  portValue,
  rateValue,
  seedValue,
  siteValue,
} from "./argument-values.ts";
import { changeCommand } from "./change-command.ts";
import { checkCommand } from "./check-command.ts";
import { compareCommand } from "./compare-command.ts";
import { type HubFlags, hubCommand, type ServeHub } from "./hub-command.ts";
import { mergeCommand } from "./merge-command.ts";
import { passesCommand } from "./passes-command.ts";
import { planCommand } from "./plan-command.ts";
import { UnusableProcedureError } from "./read-input.ts";
import { rehearseCommand } from "./rehearse-command.ts";
import { reviewCommand } from "./review-command.ts";
import { stateCommand } from "./state-command.ts";
import type { ExitStatus, Terminal } from "./terminal.ts";
import { EXIT } from "./terminal.ts";
import { UnusableInputError } from "./unusable-input-error.ts";

/** What the program needs from outside its arguments. */
export interface Surroundings {
  readonly terminal: Terminal;
  /** The present instant, asked only where a command starts from now. */
  now(): Instant;
  /** Runs a hub; given from outside, since a hub is no part of the command line. */
  readonly serveHub: ServeHub;
}

/**
 * Runs the program with its arguments (without the names of node and the script). Never throws for bad input: one
 * sentence on `err`, and the exit status says the rest.
 */
export async function runCommandLine(
  args: readonly string[],
  surroundings: Surroundings,
): Promise<ExitStatus> {
  const { terminal } = surroundings;
  let status: ExitStatus = EXIT.fine;
  const program = programFor(surroundings, (ended) => {
    status = ended;
  });
  try {
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
  const message =
    error.code === "commander.help"
      ? "Say what to do: check, plan, compare, change, merge, passes, rehearse, state, review, hub or schema; --help explains them."
      : sentenceOf(error.message);
  terminal.err(`${message}\n`);
  return EXIT.unusable;
}

/** Commander's `error: unknown option '--x'`, a hint on a line of its own or a second sentence, as one sentence. */
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

type Ended = (status: ExitStatus) => void;

function programFor(surroundings: Surroundings, ended: Ended): Command {
  const { terminal } = surroundings;
  const program = new Command("tetherline")
    .description(
      "Prepare, follow and review a walk outside a vehicle. It advises only and defers to flight rules.",
    )
    .exitOverride()
    .configureOutput({
      writeOut: (text) => terminal.out(text),
      // Messages are written in one place, as one sentence.
      writeErr: () => {},
    });
  addPlanning(program, surroundings, ended);
  addRevising(program, surroundings, ended);
  addWalks(program, surroundings, ended);
  addHub(program, surroundings, ended);
  program
    .command("schema")
    .description("print the JSON Schema of the procedure file")
    .action(() => terminal.out(`${JSON.stringify(procedureJsonSchema(), null, 2)}\n`));
  return program;
}

function addPlanning(program: Command, { terminal }: Surroundings, ended: Ended): void {
  program
    .command("check")
    .description("say what is wrong with procedures")
    .argument("<file...>", "procedure files")
    .option("--json", "print one JSON document")
    .option(
      "--mend <n>",
      "print the JSON Patch (RFC 6902) proposed for finding n of the one file",
      countValue,
    )
    .option("--watch", "check again whenever a file changes, until stopped")
    .action(async (files: string[], options: Parameters<typeof checkCommand>[1]) => {
      ended(await checkCommand(files, options, terminal));
    });

  program
    .command("plan")
    .description("plan a procedure: times, slack, waits, critical path, risk")
    .argument("<file>", "procedure file")
    .option("--start <instant>", "the instant of PET 0", instantValue)
    .option("--orbit <file>", "orbit (OMM or two-line elements) for daylight and darkness; needs --start")
    .option("--decide <id=outcome>", "how a decision comes out; may be given again", decideValue, [])
    .option("--get-aheads", "plan get-ahead tasks too")
    .option("--samples <n>", "sample durations so many times, for the risk", countValue, 10_000)
    .option("--seed <n>", "the same seed gives the same risk", seedValue, 1)
    .option("--json", "print one JSON document")
    .action(async (file: string, options: Parameters<typeof planCommand>[1]) => {
      ended(await planCommand(file, options, terminal));
    });

  program
    .command("passes")
    .description("tell day, night and contact of an orbit")
    .argument("<orbitfile>", "OMM (JSON, KVN, XML) or two-line elements")
    .requiredOption("--from <instant>", "where to begin", instantValue)
    .requiredOption("--hours <n>", "for how long", hoursValue)
    .option("--site <lat,lon,alt_m[,mask_deg]>", "a ground site; may be given again", siteValue, [])
    .option("--json", "print one JSON document")
    .action(async (file: string, options: Parameters<typeof passesCommand>[1]) => {
      ended(await passesCommand(file, options, terminal));
    });
}

function addRevising(program: Command, { terminal }: Surroundings, ended: Ended): void {
  program
    .command("compare")
    .description("say what makes one procedure of another, and what it comes to")
    .argument("<before>", "procedure file")
    .argument("<after>", "procedure file")
    .option("--start <instant>", "the instant of PET 0", instantValue)
    .option("--orbit <file>", "orbit (OMM or two-line elements) for daylight and darkness; needs --start")
    .option("--json", "print one JSON document")
    .action(async (before: string, after: string, options: Parameters<typeof compareCommand>[1]) => {
      ended(await compareCommand({ before, after }, options, terminal));
    });

  program
    .command("change")
    .description("make changes to a procedure; the rest of its text stays as it is")
    .argument("<file>", "procedure file")
    .argument("<changes>", "JSON: a list of changes, or what compare --json prints")
    .option("--out <file>", "write to a file instead of standard output")
    .action(async (file: string, changes: string, options: { out?: string }) => {
      ended(await changeCommand(file, changes, options, terminal));
    });

  program
    .command("merge")
    .description(
      "merge what two revisions made of one base; exit status 1 when both made something else of it",
    )
    .argument("<base>", "the procedure both were made from")
    .argument("<ours>", "one revision, whose text is kept where nothing changes")
    .argument("<theirs>", "the other revision")
    .option("--out <file>", "write to a file instead of standard output")
    .option("--json", "print one JSON document: the merged procedure, or the conflicts")
    .action(async (base: string, ours: string, theirs: string, options: { out?: string; json?: boolean }) => {
      ended(await mergeCommand({ base, ours, theirs }, options, terminal));
    });
}

function addWalks(program: Command, { terminal, now }: Surroundings, ended: Ended): void {
  program
    .command("rehearse")
    .description("play a procedure with sampled durations and write the log")
    .argument("<file>", "procedure file")
    .option("--seed <n>", "the same seed and start give the same log", seedValue, 1)
    .option("--start <instant>", "the instant of PET 0; now, unless given", instantValue)
    .option("--out <log>", "write to a file instead of standard output")
    .option("--pace <x>", "write entries as they happen, so many times faster than real time", paceValue)
    .action(
      async (
        file: string,
        options: Omit<Parameters<typeof rehearseCommand>[1], "start"> & { start?: Instant },
      ) => {
        ended(await rehearseCommand(file, { ...options, start: options.start ?? now() }, terminal));
      },
    );

  program
    .command("state")
    .description("show the state a log folds into")
    .argument("<log>", "log of a walk")
    .option("--at <instant>", "the state at an instant, from the entries up to it", instantValue)
    .option("--json", "print one JSON document")
    .action(async (log: string, options: { at?: Instant; json?: boolean }) => {
      ended(await stateCommand(log, options, terminal));
    });

  program
    .command("review")
    .description("compare what was done with the plan")
    .argument("<log>", "log of a walk")
    .option("--json", "print one JSON document")
    .option("--csv", "print the steps as CSV (RFC 4180)")
    .option("--xes", "print an event log in XES (IEEE 1849)")
    .action(async (log: string, options: { json?: boolean; csv?: boolean; xes?: boolean }) => {
      ended(await reviewCommand(log, options, terminal));
    });
}

function addHub(program: Command, { terminal, serveHub }: Surroundings, ended: Ended): void {
  program
    .command("hub")
    .description("serve the app, and keep the devices that follow a walk in agreement")
    .option("--port <n>", "the port to listen at; 0 takes any", portValue, 4173)
    .option("--host <name>", "where to listen: 0.0.0.0 for the whole network, with TLS", "localhost")
    .option("--data <folder>", "where the log is kept; a folder for this user's data, unless given")
    .option("--cert <file>", "certificate in PEM; needs --key")
    .option("--key <file>", "its private key in PEM")
    .option("--engine <url>", "an engine that several hubs share: nats://host:port")
    .option("--name <text>", "what people call this hub; the machine's name, unless given", nameValue)
    .option("--plain", "plain HTTP, for a proxy in front that does TLS")
    .option("--new-owner-code", "make another owner's code; the old one is of no use any more")
    .option(
      "--upstream <url>",
      "another hub to link with over a gap; #fingerprint behind it trusts that certificate",
    )
    .option("--upstream-code <code>", "that hub's owner's code (all walks), or an invitation as relay (one)")
    .option("--rate <n>", "requests a minute that one device may make", rateValue, 30_000)
    .option("--app <folder>", "the built app, unless it is where the build puts it")
    .action(async (flags: HubFlags) => {
      ended(await hubCommand(flags, terminal, serveHub));
    });
}
