import { readdirSync } from "node:fs";
import envPaths from "env-paths";

/** Where a hub keeps its log when no folder is named. */
export interface HubDataFolder {
  readonly folder: string;
  /** True when an earlier version made the folder in the directory that the hub is started from. */
  readonly isEarlier: boolean;
}

/** The folder that earlier versions made in the directory they were started from. */
const EARLIER_FOLDER = "./hub-data";

/**
 * The platform's folder for the data of this user's programs (on Linux `$XDG_DATA_HOME/tetherline`, or
 * `~/.local/share/tetherline`). A log that an earlier version left in `./hub-data` is used where it is, so that an
 * update loses no walk.
 */
export function hubDataFolder(): HubDataFolder {
  if (hasFiles(EARLIER_FOLDER)) return { folder: EARLIER_FOLDER, isEarlier: true };
  return { folder: envPaths("tetherline", { suffix: "" }).data, isEarlier: false };
}

function hasFiles(folder: string): boolean {
  try {
    return readdirSync(folder).length > 0;
  } catch {
    // There is no such path, or it is not a folder.
    return false;
  }
}
