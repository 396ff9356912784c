import { accessSync, constants } from "node:fs";

/** Whether a file is there and may be run. */
export function isExecutable(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
