import { chmodSync, copyFileSync, existsSync, mkdirSync, renameSync, rmSync, statSync } from "node:fs";
import { join } from "node:path";
import Database from "better-sqlite3";
import { message } from "../../words/index.ts";
import { makeFolder } from "../data-folder/index.ts";
import { EngineTroubleError } from "./engine.ts";
import { openDatabase, STORE_FILE } from "./sqlite-opening.ts";
import { insistOnOwn, insistOnSound } from "./sqlite-schema.ts";
import { withTrouble } from "./sqlite-trouble.ts";
import { markerPath } from "./store-marker.ts";

/** What was brought back. */
export interface RestoredStore {
  readonly walks: number;
  readonly entries: number;
  /** Where the store is that was there before; `null` where there was none. */
  readonly aside: string | null;
}

/**
 * Brings a backup back into a data folder that no hub uses; what was there is set aside, with its write-ahead file and its
 * marker. The store has a new epoch. Throws {@link EngineTroubleError} when the backup is none or is damaged, or when a hub
 * uses the folder; then nothing was changed.
 */
export function restoreStore(folder: string, backup: string): RestoredStore {
  withTrouble(folder, () => makeFolder(folder));
  const file = join(folder, STORE_FILE);
  const draft = `${file}.restored`;
  try {
    withTrouble(backup, () => copyFileSync(backup, draft));
    withTrouble(draft, () => chmodSync(draft, 0o600));
    insistOnBackup(draft, backup);
    insistOnUnused(file);
    const aside = withTrouble(folder, () => setAside(folder, file));
    withTrouble(file, () => renameSync(draft, file));
    const opened = openDatabase(folder);
    const counted = opened.database
      .prepare<[], { walks: number; entries: number }>(
        "SELECT count(*) AS walks, coalesce(sum(entries), 0) AS entries FROM walks WHERE entries > 0",
      )
      .get();
    opened.close();
    return { walks: counted?.walks ?? 0, entries: counted?.entries ?? 0, aside };
  } finally {
    for (const path of [draft, `${draft}-wal`, `${draft}-shm`]) rmSync(path, { force: true });
  }
}

function insistOnBackup(draft: string, backup: string): void {
  withTrouble(backup, () => {
    const database = new Database(draft);
    try {
      insistOnOwn(database, backup);
      insistOnSound(database, backup, statSync(draft).size);
      // A backup may be a copy of the main file of a store in use.
      database.pragma("journal_mode = DELETE");
      database.exec("UPDATE about SET value = 'no' WHERE key = 'open'");
    } finally {
      database.close();
    }
  });
}

/** A hub that runs holds its file locked. */
function insistOnUnused(file: string): void {
  if (!existsSync(file)) return;
  withTrouble(file, () => {
    const database = new Database(file, { timeout: 0 });
    try {
      database.pragma("locking_mode = EXCLUSIVE");
      database.exec("BEGIN EXCLUSIVE; ROLLBACK");
    } catch (cause) {
      // A store that is damaged is set aside all the same.
      const code = cause instanceof Error && "code" in cause ? String(cause.code) : "";
      if (/BUSY|LOCKED/.test(code))
        throw new EngineTroubleError(message("engine/another-hub", { place: file }));
    } finally {
      database.close();
    }
  });
}

function setAside(folder: string, file: string): string | null {
  const there = [file, `${file}-wal`, `${file}-shm`, markerPath(folder)].filter(existsSync);
  if (there.length === 0) return null;
  let aside = join(folder, "before-restore");
  for (let number = 2; existsSync(aside); number += 1) aside = join(folder, `before-restore-${number}`);
  mkdirSync(aside, { mode: 0o700 });
  for (const path of there) renameSync(path, join(aside, path.slice(folder.length + 1)));
  return aside;
}
