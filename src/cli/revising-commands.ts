import type { Command } from "commander";
import { words } from "../words/index.ts";
import { instantValue, siteValue } from "./argument-values.ts";
import { changeCommand } from "./change-command.ts";
import { compareCommand } from "./compare-command.ts";
import { mergeCommand } from "./merge-command.ts";
import type { Ended, Surroundings } from "./surroundings.ts";

/** Adds the commands that compare, change and merge revisions of a procedure. */
export function addRevising(program: Command, { terminal }: Surroundings, ended: Ended): void {
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
