import { randomBytes } from "node:crypto";
import { accessSync, constants, existsSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import Database from "better-sqlite3";
import { message } from "../../words/index.ts";
import { makeFolder } from "../data-folder/index.ts";
import { EngineTroubleError } from "./engine.ts";
import { troubleOf, withTrouble } from "./sqlite-trouble.ts";
import { markerPath, readMarker, writeMarker } from "./store-marker.ts";

/** An open database of a hub. */
export interface OpenDatabase {
  readonly database: Database.Database;
  /** The file, for messages. */
  readonly file: string;
  readonly epoch: string;
  /** Ends it in order. */
  close(): void;
}

const FILE = "walks.sqlite";
/** Says whose file it is (SQLite's `application_id`): "TLhb". */
const APPLICATION = 0x544c6862;
const SCHEMA_VERSION = 1;
/** How long the process before this one may take to end, in ms. */
const PATIENCE = 2_000;
/** Larger files, in bytes, are not read through at opening: it would take longer than a restart may. */
const LARGEST_READ_THROUGH = 512 * 1024 * 1024;

const SCHEMA = `
  CREATE TABLE about (key TEXT PRIMARY KEY, value TEXT NOT NULL) WITHOUT ROWID;
  CREATE TABLE walks (
    number INTEGER PRIMARY KEY, walk TEXT NOT NULL UNIQUE, entries INTEGER NOT NULL, head INTEGER NOT NULL);
  CREATE TABLE entries (
    walk INTEGER NOT NULL REFERENCES walks (number), "offset" INTEGER NOT NULL,
    source TEXT NOT NULL, id TEXT NOT NULL, sequence TEXT NOT NULL,
    received INTEGER NOT NULL, via TEXT, text TEXT NOT NULL,
    PRIMARY KEY (walk, "offset"), UNIQUE (walk, source, id));
  CREATE TABLE refused (
    number INTEGER PRIMARY KEY AUTOINCREMENT, walk TEXT NOT NULL,
    received INTEGER NOT NULL, reason TEXT NOT NULL, text TEXT NOT NULL);
  CREATE INDEX refused_by_walk ON refused (walk, number);
  CREATE TABLE keep (key TEXT PRIMARY KEY, value TEXT NOT NULL) WITHOUT ROWID;
  PRAGMA application_id = ${APPLICATION};
  PRAGMA user_version = ${SCHEMA_VERSION};
`;

/**
 * Opens the database of a data folder, or makes one in a folder that never had one. Offsets go with an epoch; it is made
 * anew when the file is a copy or was brought back from one (its inode, birth or seal is not what it was). Throws
 * {@link EngineTroubleError} when the log cannot be had whole and written.
 */
export function openDatabase(folder: string): OpenDatabase {
  const file = join(folder, FILE);
  withTrouble(folder, () => makeFolder(folder));
  const seals = withTrouble(folder, () => readMarker(folder));
  if (seals !== null) insistOnFile(file, folder);
  // Check here, because SQLite would fall back to read-only access and fail later with a less helpful message.
  for (const path of [folder, file].filter(existsSync))
    withTrouble(path, () => accessSync(path, constants.W_OK));
  const hadWal = existsSync(`${file}-wal`);
  const database = withTrouble(file, () => connect(file));
  try {
    return withTrouble(file, () => {
      lock(database);
      if (isBlank(database)) {
        if (seals !== null) throw goneError(file, folder);
        database.exec(`BEGIN; ${SCHEMA} COMMIT;`);
      } else {
        insistOnSound(database, file);
        if (seals !== null && aboutOf(database, "open") === "yes" && !hadWal)
          throw goneError(`${file}-wal`, folder);
      }
      const epoch = sealAnew(database, file, folder, seals);
      return { database, file, epoch, close: () => closeInOrder(database, file, folder) };
    });
  } catch (cause) {
    database.close();
    throw cause;
  }
}

function goneError(file: string, folder: string): EngineTroubleError {
  return new EngineTroubleError(message("engine/log-gone", { folder, file, marker: markerPath(folder) }));
}

function insistOnFile(file: string, folder: string): void {
  const size = withTrouble(file, () => statSync(file, { throwIfNoEntry: false })?.size ?? 0);
  if (size === 0 && !existsSync(`${file}-wal`)) throw goneError(file, folder);
}

function connect(file: string): Database.Database {
  try {
    return new Database(file, { timeout: PATIENCE });
  } catch (cause) {
    const known = troubleOf(file, cause);
    if (known instanceof EngineTroubleError || !(cause instanceof Error)) throw known;
    if (cause instanceof Database.SqliteError) throw cause;
    throw new EngineTroubleError(message("engine/no-sqlite", { why: cause.message.split("\n")[0] ?? "" }), {
      cause,
    });
  }
}

/** Takes the file for this process alone until it ends, and sees to it that what is confirmed is on the disk. */
function lock(database: Database.Database): void {
  database.pragma("locking_mode = EXCLUSIVE");
  database.pragma("journal_mode = WAL");
  database.pragma("synchronous = FULL");
  database.exec("BEGIN EXCLUSIVE; COMMIT;");
}

function isBlank(database: Database.Database): boolean {
  return database.prepare("SELECT count(*) FROM sqlite_schema").pluck().get() === 0;
}

function insistOnSound(database: Database.Database, file: string): void {
  if (database.pragma("application_id", { simple: true }) !== APPLICATION) {
    throw new EngineTroubleError(message("engine/other-file", { file }));
  }
  const version = Number(database.pragma("user_version", { simple: true }));
  if (version !== SCHEMA_VERSION) {
    throw new EngineTroubleError(
      message(version > SCHEMA_VERSION ? "engine/newer-version" : "engine/other-version", {
        file,
        version,
        known: SCHEMA_VERSION,
      }),
    );
  }
  if (statSync(file).size > LARGEST_READ_THROUGH) return;
  const found = database.pragma("quick_check(1)", { simple: true });
  const unsound = database
    .prepare(`
      SELECT (SELECT count(*) FROM entries WHERE NOT json_valid(text)) + (
        SELECT count(*) FROM walks WHERE (entries, head) IS NOT (
          SELECT count(*), coalesce(max("offset"), 0) FROM entries WHERE entries.walk = walks.number))`)
    .pluck()
    .get();
  if (found !== "ok" || unsound !== 0) {
    throw new EngineTroubleError(
      message("engine/unsound", { file, found: String(found), unsound: String(unsound) }),
    );
  }
}

function aboutOf(database: Database.Database, key: string): string | null {
  const value = database.prepare("SELECT value FROM about WHERE key = ?").pluck().get(key);
  return typeof value === "string" ? value : null;
}

/** Notes that the store is in use, as this very file; the epoch that holds from now on. */
function sealAnew(
  database: Database.Database,
  file: string,
  folder: string,
  seals: readonly string[] | null,
): string {
  // A copy put in place of the file may reuse its inode number, but has a later creation time.
  const { dev, ino, birthtimeNs } = statSync(file, { bigint: true });
  const place = `${dev}:${ino}:${birthtimeNs}`;
  const oldSeal = aboutOf(database, "seal");
  const isWhatItWas =
    oldSeal !== null && seals?.includes(oldSeal) === true && aboutOf(database, "place") === place;
  const epoch = (isWhatItWas ? aboutOf(database, "epoch") : null) ?? randomBytes(12).toString("base64url");
  changeSeal(database, folder, { epoch, place, open: "yes" });
  // Copy the note that the store is in use from the write-ahead file into the main file as well.
  database.pragma("wal_checkpoint(TRUNCATE)");
  return epoch;
}

/** A copy made earlier has an earlier seal than the marker, wherever it is put. */
function changeSeal(
  database: Database.Database,
  folder: string,
  about: Readonly<Record<string, string>>,
): void {
  const [old, seal] = [aboutOf(database, "seal"), randomBytes(12).toString("base64url")];
  // When there is no marker, a crash at this point must not leave a marker without a store.
  if (old !== null) writeMarker(folder, [old, seal]);
  const put = database.prepare(
    "INSERT INTO about VALUES (?, ?) ON CONFLICT DO UPDATE SET value = excluded.value",
  );
  database.transaction(() => {
    for (const [key, value] of Object.entries({ ...about, seal })) put.run(key, value);
  })();
  writeMarker(folder, [seal]);
}

function closeInOrder(database: Database.Database, file: string, folder: string): void {
  withTrouble(file, () => {
    try {
      changeSeal(database, folder, { open: "no" });
      database.close();
    } catch (cause) {
      database.close();
      // The store still says that it is in use, so that the next opening looks for this file.
      if (!existsSync(`${file}-wal`)) writeFileSync(`${file}-wal`, "");
      throw cause;
    }
  });
}
