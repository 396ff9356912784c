import { existsSync, mkdirSync, statSync } from "node:fs";
import { dirname } from "node:path";

/**
 * Makes a folder and those above it where they are not there, for this user alone. Throws as `mkdirSync` does. Node's own
 * recursive `mkdirSync` never returns where a folder that is there has no room for others, as `/proc`.
 */
export function makeFolder(folder: string): void {
  const above = dirname(folder);
  if (!existsSync(above)) makeFolder(above);
  try {
    mkdirSync(folder, { mode: 0o700 });
  } catch (cause) {
    if (!statSync(folder, { throwIfNoEntry: false })?.isDirectory()) throw cause;
  }
}
