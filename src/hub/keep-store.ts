import { backUpStore } from "./backup/index.ts";
import { EngineTroubleError, restoreStore } from "./engine/index.ts";
import { HubTroubleError } from "./hub-options.ts";

/** What came of bringing a backup back. */
export type Restored = ReturnType<typeof restoreStore>;

/** Backs up the log in a data folder into a new file, whether its hub runs or not. Rejects with {@link HubTroubleError}. */
export function backupHub(data: string, file: string): Promise<void> {
  return inTrouble(() => backUpStore(data, file));
}

/** Brings a backup back into a data folder whose hub does not run. Rejects with {@link HubTroubleError}. */
export function restoreHub(data: string, file: string): Promise<Restored> {
  return inTrouble(async () => restoreStore(data, file));
}

async function inTrouble<T>(work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (cause) {
    throw cause instanceof EngineTroubleError ? new HubTroubleError(cause.said, { cause }) : cause;
  }
}
