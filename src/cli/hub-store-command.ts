import { words } from "../words/index.ts";
import { hubDataFolder } from "./hub-data-folder.ts";
import type { ExitStatus, Terminal } from "./terminal.ts";
import { EXIT } from "./terminal.ts";

/** Backs up a hub's log and brings it back. Both reject with `UnusableInputError` when that cannot be done. */
export interface HubStore {
  backup(data: string, file: string): Promise<void>;
  restore(
    data: string,
    file: string,
  ): Promise<{ readonly walks: number; readonly entries: number; readonly aside: string | null }>;
}

/** `hub backup`: writes the log of a hub, which may go on running, into a new file. */
export async function hubBackupCommand(
  { to, data }: { readonly to: string; readonly data?: string },
  terminal: Terminal,
  store: HubStore,
): Promise<ExitStatus> {
  await store.backup(data ?? hubDataFolder().folder, to);
  terminal.out(`${words("cli/hub-backed-up", { file: to })}\n`);
  return EXIT.fine;
}

/** `hub restore`: brings a backup back in place of the log of a hub that does not run. */
export async function hubRestoreCommand(
  { from, data }: { readonly from: string; readonly data?: string },
  terminal: Terminal,
  store: HubStore,
): Promise<ExitStatus> {
  const folder = data ?? hubDataFolder().folder;
  const { walks, entries, aside } = await store.restore(folder, from);
  terminal.out(`${words("cli/hub-restored", { folder, walks, entries })}\n`);
  if (aside !== null) terminal.out(`${words("cli/hub-set-aside", { aside })}\n`);
  return EXIT.fine;
}
