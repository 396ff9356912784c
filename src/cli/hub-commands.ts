import type { Command } from "commander";
import { words } from "../words/index.ts";
import { namesValue, nameValue, networksValue, portValue, rateValue } from "./argument-values.ts";
import { type HubFlags, hubCommand } from "./hub-command.ts";
import { hubBackupCommand, hubRestoreCommand } from "./hub-store-command.ts";
import type { Ended, Surroundings } from "./surroundings.ts";

/** Adds the commands that run a hub, and that back up and bring back its log. */
export function addHub(program: Command, { terminal, serveHub, hubStore }: Surroundings, ended: Ended): void {
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
