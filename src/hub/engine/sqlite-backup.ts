import { chmodSync, existsSync, renameSync, rmSync } from "node:fs";
import Database from "better-sqlite3";
import { message } from "../../words/index.ts";
import { EngineTroubleError } from "./engine.ts";
import { troubleOf } from "./sqlite-trouble.ts";

/**
 * Writes an open database into one file that is not there yet, while it goes on being used. Rejects with
 * {@link EngineTroubleError} when that cannot be done; a file begun is removed.
 */
export async function backUp(database: Database.Database, file: string): Promise<void> {
  if (existsSync(file)) throw new EngineTroubleError(message("engine/backup-is-there", { file }));
  const draft = `${file}.new`;
  try {
    await database.backup(draft);
    chmodSync(draft, 0o600);
    const copy = new Database(draft);
    try {
      // One file that needs no other beside it, of a store that nobody uses.
      copy.pragma("journal_mode = DELETE");
      copy.exec(
        "UPDATE about SET value = 'no' WHERE key = 'open'; UPDATE about SET value = 'backup' WHERE key = 'seal'",
      );
    } finally {
      copy.close();
    }
    renameSync(draft, file);
  } catch (cause) {
    rmSync(draft, { force: true });
    throw troubleOf(file, cause);
  }
}
