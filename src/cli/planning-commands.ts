import type { Command } from "commander";
import { words } from "../words/index.ts";
import {
  againValue,
  chanceValue,
  countValue,
  decideValue,
  durationValue,
  hoursValue,
  instantValue,
  seedValue,
  siteValue,
} from "./argument-values.ts";
import { checkCommand } from "./check-command.ts";
import { type FitArguments, fitCommand } from "./fit-command.ts";
import { passesCommand } from "./passes-command.ts";
import { planCommand } from "./plan-command.ts";
import { type SplitArguments, splitCommand } from "./split-command.ts";
import type { Ended, Surroundings } from "./surroundings.ts";

/** Adds the commands that check and plan a procedure. */
export function addPlanning(program: Command, { terminal }: Surroundings, ended: Ended): void {
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
    .argument("<file>", words("help/fit-file"))
    .option("--at <instant>", words("help/fit-at"), instantValue)
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
