import type { Command } from "commander";
import type { Instant } from "../core/units/index.ts";
import { words } from "../words/index.ts";
import {
  againValue,
  countValue,
  instantValue,
  paceValue,
  renamedValue,
  seedValue,
} from "./argument-values.ts";
import { type BriefArguments, briefCommand } from "./brief-command.ts";
import { type ExtractArguments, extractCommand } from "./extract-command.ts";
import { type LearnArguments, learnCommand } from "./learn-command.ts";
import { rehearseCommand } from "./rehearse-command.ts";
import { reviewCommand } from "./review-command.ts";
import { stateCommand } from "./state-command.ts";
import type { Ended, Surroundings } from "./surroundings.ts";
import { verifyCommand } from "./verify-command.ts";
import { type WalksArguments, walksCommand } from "./walks-command.ts";

/** Adds the commands about walks and their logs to the program. */
export function addWalks(program: Command, { terminal, now }: Surroundings, ended: Ended): void {
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
