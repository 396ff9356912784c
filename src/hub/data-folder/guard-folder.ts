import { chmodSync, readdirSync, statSync } from "node:fs";
import { join } from "node:path";

/** Files and folders that a hub makes in its data folder, by the beginning of their names. */
const OWN = ["walks.sqlite", "hub-store.json", "hub-secrets.json", "hub.sock", "tls", "before-restore"];
const FOR_OTHERS = 0o077;
const WRITTEN_BY_OTHERS = 0o022;

/** What was found of who may get at a data folder. */
export interface GuardedFolder {
  /** Whether others could get at something, which they cannot any more. */
  readonly isMended: boolean;
  /** Whether others may put files of theirs into the folder, which is not the hub's alone. */
  readonly isOpen: boolean;
}

/**
 * Sees to it that nobody else gets at what a hub keeps: its files for this user alone, and the folder too where it holds
 * nothing but them. Throws as `chmodSync` does. Windows has no such rights.
 */
export function guardFolder(folder: string): GuardedFolder {
  if (process.platform === "win32") return { isMended: false, isOpen: false };
  let isMended = false;
  const close = (path: string, mode: number): void => {
    chmodSync(path, mode & ~FOR_OTHERS & 0o777);
    isMended = true;
  };
  const names = readdirSync(folder);
  const own = names.filter((name) => OWN.some((beginning) => name.startsWith(beginning)));
  for (const name of own) {
    const path = join(folder, name);
    const { mode } = statSync(path);
    if ((mode & FOR_OTHERS) !== 0) close(path, mode);
  }
  const { mode } = statSync(folder);
  if (own.length === names.length && (mode & FOR_OTHERS) !== 0) close(folder, mode);
  return { isMended, isOpen: (statSync(folder).mode & WRITTEN_BY_OTHERS) !== 0 };
}
