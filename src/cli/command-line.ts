import { Command, CommanderError } from "commander";
import type { Instant } from "../core/units/index.ts";
import { UnusableFileError } from "../io/files/index.ts";
import { english, englishWords } from "../words/english/index.ts";
import { speak, words } from "../words/index.ts";
import {
  againValue,
  chanceValue,
  countValue,
  decideValue,
  durationValue,
  hoursValue,
  instantValue,
  namesValue,
  nameValue,
  networksValue,
  paceValue,
  portValue,
  rateValue,
  renamedValue,
  seedValue,
  siteValue,
} from "./argument-values.ts";
import { type BriefArguments, briefCommand } from "./brief-command.ts";
import { changeCommand } from "./change-command.ts";
import { checkCommand } from "./check-command.ts";
import { compareCommand } from "./compare-command.ts";
import { type ExtractArguments, extractCommand } from "./extract-command.ts";
import { type FitArguments, fitCommand } from "./fit-command.ts";
import { type HubFlags, hubCommand, type ServeHub } from "./hub-command.ts";
import { type HubStore, hubBackupCommand, hubRestoreCommand } from "./hub-store-command.ts";
import { type LearnArguments, learnCommand } from "./learn-command.ts";
import { mergeCommand } from "./merge-command.ts";
import { passesCommand } from "./passes-command.ts";
import { planCommand } from "./plan-command.ts";
import { programVersion } from "./program-version.ts";
import { UnusableProcedureError } from "./read-input.ts";
import { rehearseCommand } from "./rehearse-command.ts";
import { reviewCommand } from "./review-command.ts";
import { type SchemaArguments, schemaCommand } from "./schema-command.ts";
import { speakAsAsked } from "./speak-as-asked.ts";
import { type SplitArguments, splitCommand } from "./split-command.ts";
import { stateCommand } from "./state-command.ts";
import type { ExitStatus, Terminal } from "./terminal.ts";
import { EXIT } from "./terminal.ts";
import { UnusableInputError } from "./unusable-input-error.ts";
import { verifyCommand } from "./verify-command.ts";
import { type WalksArguments, walksCommand } from "./walks-command.ts";

/** What the program needs from outside its arguments. */
export interface Surroundings {
  readonly terminal: Terminal;
  /** The present instant. It is asked for only when a command starts from now. */
  now(): Instant;
  /** Runs a hub. It is passed in, since a hub is not part of the command line. */
  readonly serveHub: ServeHub;
  /** Backs up a hub's log and brings it back, for the same reason. */
  readonly hubStore: HubStore;
}

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

type Ended = (status: ExitStatus) => void;

function programFor(surroundings: Surroundings, ended: Ended): Command {
  const { terminal } = surroundings;
  const program = new Command("tetherline")
    .description(words("help/program"))
    .option("--lang <language>", words("help/lang"))
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

function addPlanning(program: Command, { terminal }: Surroundings, ended: Ended): void {
  program
    .command("check")
    .description(words("help/check"))
    .argument("<file...>", words("help/files"))
    .option("--start <instant>", words("help/start"), instantValue)
    .option("--orbit <file>", words("help/orbit"))
    .option("--site <lat,lon,alt_m[,mask_deg]>", words("help/contact-site"), siteValue, [])
    .option("--json", words("help/json"))
    .option("--mend <n>", words("help/mend"), countValue)
    .option("--watch", words("help/watch"))
    .action(async (files: string[], options: Parameters<typeof checkCommand>[1]) => {
      ended(await checkCommand(files, options, terminal));
    });

  program
    .command("plan")
    .description(words("help/plan"))
    .argument("<file>", words("help/file"))
    .option("--start <instant>", words("help/start"), instantValue)
    .option("--orbit <file>", words("help/orbit"))
    .option("--site <lat,lon,alt_m[,mask_deg]>", words("help/contact-site"), siteValue, [])
    .option("--decide <id=outcome>", words("help/decide"), decideValue, [])
    .option("--get-aheads", words("help/get-aheads"))
    .option("--get-ahead <id>", words("help/get-ahead"), againValue, [])
    .option("--samples <n>", words("help/samples"), countValue, 10_000)
    .option("--seed <n>", words("help/plan-seed"), seedValue, 1)
    .option("--json", words("help/json"))
    .option("--csv", words("help/plan-csv"))
    .option("--xlsx <out>", words("help/plan-xlsx"))
    .action(async (file: string, options: Parameters<typeof planCommand>[1]) => {
      ended(await planCommand(file, options, terminal));
    });

  program
    .command("fit")
    .description(words("help/fit"))
    .argument("<file>", words("help/fit-file"))
    .option("--limit <duration>", words("help/limit"), durationValue)
    .option("--chance <p>", words("help/chance"), chanceValue)
    .option("--at <instant>", words("help/fit-at"), instantValue)
    .option("--start <instant>", words("help/start"), instantValue)
    .option("--orbit <file>", words("help/orbit"))
    .option("--leave-out <task>", words("help/leave-out"), againValue, [])
    .option("--samples <n>", words("help/fit-samples"), countValue, 2_000)
    .option("--seed <n>", words("help/fit-seed"), seedValue, 1)
    .option("--tries <n>", words("help/fit-tries"), countValue, 20_000)
    .option("--json", words("help/json"))
    .action(async (file: string, options: FitArguments) => {
      ended(await fitCommand(file, options, terminal));
    });

  program
    .command("split")
    .description(words("help/split"))
    .argument("<file>", words("help/file"))
    .option("--start <instant>", words("help/start"), instantValue)
    .option("--orbit <file>", words("help/orbit"))
    .option("--tries <n>", words("help/split-tries"), countValue, 20_000)
    .option("--seed <n>", words("help/fit-seed"), seedValue, 1)
    .option("--proof", words("help/split-proof"))
    .option("--json", words("help/json"))
    .action(async (file: string, options: SplitArguments) => {
      ended(await splitCommand(file, options, terminal));
    });

  program
    .command("passes")
    .description(words("help/passes"))
    .argument("<orbitfile>", words("help/orbit-file"))
    .requiredOption("--from <instant>", words("help/from"), instantValue)
    .requiredOption("--hours <n>", words("help/hours"), hoursValue)
    .option("--site <lat,lon,alt_m[,mask_deg]>", words("help/site"), siteValue, [])
    .option("--json", words("help/json"))
    .action(async (file: string, options: Parameters<typeof passesCommand>[1]) => {
      ended(await passesCommand(file, options, terminal));
    });
}

function addRevising(program: Command, { terminal }: Surroundings, ended: Ended): void {
  program
    .command("compare")
    .description(words("help/compare"))
    .argument("<before>", words("help/file"))
    .argument("<after>", words("help/file"))
    .option("--start <instant>", words("help/start"), instantValue)
    .option("--orbit <file>", words("help/orbit"))
    .option("--site <lat,lon,alt_m[,mask_deg]>", words("help/contact-site"), siteValue, [])
    .option("--json", words("help/json"))
    .action(async (before: string, after: string, options: Parameters<typeof compareCommand>[1]) => {
      ended(await compareCommand({ before, after }, options, terminal));
    });

  program
    .command("change")
    .description(words("help/change"))
    .argument("<file>", words("help/file"))
    .argument("<changes>", words("help/changes"))
    .option("--out <file>", words("help/out"))
    .action(async (file: string, changes: string, options: { out?: string }) => {
      ended(await changeCommand(file, changes, options, terminal));
    });

  program
    .command("merge")
    .description(words("help/merge"))
    .argument("<base>", words("help/merge-base"))
    .argument("<ours>", words("help/merge-ours"))
    .argument("<theirs>", words("help/merge-theirs"))
    .option("--out <file>", words("help/out"))
    .option("--json", words("help/merge-json"))
    .action(async (base: string, ours: string, theirs: string, options: { out?: string; json?: boolean }) => {
      ended(await mergeCommand({ base, ours, theirs }, options, terminal));
    });
}

function addWalks(program: Command, { terminal, now }: Surroundings, ended: Ended): void {
  program
    .command("rehearse")
    .description(words("help/rehearse"))
    .argument("<file>", words("help/file"))
    .option("--seed <n>", words("help/rehearse-seed"), seedValue, 1)
    .option("--start <instant>", words("help/rehearse-start"), instantValue)
    .option("--out <log>", words("help/out"))
    .option("--pace <x>", words("help/pace"), paceValue)
    .option("--count <n>", words("help/rehearse-count"), countValue)
    .option("--surprises <file>", words("help/rehearse-surprises"))
    .action(
      async (
        file: string,
        options: Omit<Parameters<typeof rehearseCommand>[1], "start"> & { start?: Instant },
      ) => {
        ended(await rehearseCommand(file, { ...options, start: options.start ?? now() }, terminal));
      },
    );

  program
    .command("learn")
    .description(words("help/learn"))
    .argument("<log...>", words("help/walk-logs"))
    .option("--procedure <file>", words("help/learn-procedure"))
    .option("--renamed <old=new>", words("help/renamed"), renamedValue, [])
    .option("--json", words("help/json"))
    .action(async (logs: string[], options: LearnArguments) => {
      ended(await learnCommand(logs, options, terminal));
    });

  program
    .command("walks")
    .description(words("help/walks"))
    .argument("<log...>", words("help/walk-logs"))
    .option("--versus <log...>", words("help/versus"), [])
    .option("--json", words("help/json"))
    .action(async (logs: string[], options: WalksArguments) => {
      ended(await walksCommand(logs, options, terminal));
    });

  program
    .command("brief")
    .description(words("help/brief"))
    .argument("<file>", words("help/fit-file"))
    .requiredOption("--html <file>", words("help/brief-html"))
    .option("--start <instant>", words("help/start"), instantValue)
    .option("--orbit <file>", words("help/orbit"))
    .action(async (file: string, options: BriefArguments) => {
      ended(await briefCommand(file, options, terminal));
    });

  program
    .command("state")
    .description(words("help/state"))
    .argument("<log>", words("help/log"))
    .option("--at <instant>", words("help/at"), instantValue)
    .option("--json", words("help/json"))
    .action(async (log: string, options: { at?: Instant; json?: boolean }) => {
      ended(await stateCommand(log, options, terminal));
    });

  program
    .command("review")
    .description(words("help/review"))
    .argument("<log>", words("help/log"))
    .option("--json", words("help/json"))
    .option("--csv", words("help/csv"))
    .option("--xes", words("help/xes"))
    .option("--trust <key>", words("help/verify-trust"), againValue, [])
    .action(async (log: string, options: Parameters<typeof reviewCommand>[1]) => {
      ended(await reviewCommand(log, options, terminal));
    });

  program
    .command("verify")
    .description(words("help/verify"))
    .argument("<log>", words("help/verify-log"))
    .option("--trust <key>", words("help/verify-trust"), againValue, [])
    .option("--code <code>", words("help/verify-code"))
    .option("--quick", words("help/verify-quick"))
    .option("--json", words("help/json"))
    .action(async (log: string, options: Parameters<typeof verifyCommand>[1]) => {
      ended(await verifyCommand(log, options, terminal));
    });

  program
    .command("extract")
    .description(words("help/extract"))
    .argument("<log>", words("help/log"))
    .option("--step <id>", words("help/extract-step"), againValue, [])
    .option("--kind <kind>", words("help/extract-kind"), againValue, [])
    .requiredOption("--out <file>", words("help/extract-out"))
    .action(async (log: string, options: ExtractArguments) => {
      ended(await extractCommand(log, options, terminal));
    });
}

function addHub(program: Command, { terminal, serveHub, hubStore }: Surroundings, ended: Ended): void {
  const hub = program
    .command("hub")
    .description(words("help/hub"))
    .option("--port <n>", words("help/port"), portValue, 4173)
    .option("--host <name>", words("help/host"), "localhost")
    .option("--data <folder>", words("help/data"))
    .option("--cert <file>", words("help/cert"))
    .option("--key <file>", words("help/key"))
    .option("--engine <url>", words("help/engine"))
    .option("--name <text>", words("help/name"), nameValue)
    .option("--plain", words("help/plain"))
    .option("--new-owner-code", words("help/new-owner-code"))
    .option("--upstream <url>", words("help/upstream"))
    .option("--upstream-code <code>", words("help/upstream-code"))
    .option("--upstream-code-file <file>", words("help/upstream-code-file"))
    .option("--engine-file <file>", words("help/engine-file"))
    .option("--journal <file>", words("help/journal"))
    .option("--log <file>", words("help/hub-log"))
    .option("--also-as <name>", words("help/also-as"), namesValue, [])
    .option("--proxy <address>", words("help/proxy"), networksValue, [])
    .option("--rate <n>", words("help/rate"), rateValue, 30_000)
    .option("--app <folder>", words("help/app"))
    .action(async (flags: HubFlags) => {
      ended(await hubCommand(flags, terminal, serveHub));
    });
  // "--data" is an option of "hub", which its own commands read as theirs.
  hub
    .command("backup")
    .description(words("help/hub-backup"))
    .requiredOption("--to <file>", words("help/hub-backup-to"))
    .action(async (_flags: unknown, command: Command) => {
      ended(
        await hubBackupCommand(command.optsWithGlobals<{ to: string; data?: string }>(), terminal, hubStore),
      );
    });
  hub
    .command("restore")
    .description(words("help/hub-restore"))
    .requiredOption("--from <file>", words("help/hub-restore-from"))
    .action(async (_flags: unknown, command: Command) => {
      ended(
        await hubRestoreCommand(
          command.optsWithGlobals<{ from: string; data?: string }>(),
          terminal,
          hubStore,
        ),
      );
    });
}
