import type Database from "better-sqlite3";
import { message } from "../../words/index.ts";
import { EngineTroubleError } from "./engine.ts";
import { chained } from "./sqlite-entries.ts";

/** Says whose file it is (SQLite's `application_id`): "TLhb". */
const APPLICATION = 0x544c6862;
const VERSION = 3;
/** Larger files, in bytes, are not read through at opening: it would take longer than a restart may. */
const LARGEST_READ_THROUGH = 512 * 1024 * 1024;

/** How much each source wrote, and the numbers that it gave, which are read without the entries. */
const SOURCES = `
  CREATE TABLE sources (
    walk INTEGER NOT NULL REFERENCES walks (number), source TEXT NOT NULL, length INTEGER NOT NULL,
    PRIMARY KEY (walk, source)) WITHOUT ROWID;
  CREATE INDEX entries_by_sequence ON entries (walk, source, sequence);`;

const SCHEMA = `
  CREATE TABLE about (key TEXT PRIMARY KEY, value TEXT NOT NULL) WITHOUT ROWID;
  CREATE TABLE walks (
    number INTEGER PRIMARY KEY, walk TEXT NOT NULL UNIQUE, entries INTEGER NOT NULL, head INTEGER NOT NULL);
  CREATE TABLE entries (
    walk INTEGER NOT NULL REFERENCES walks (number), "offset" INTEGER NOT NULL,
    source TEXT NOT NULL, id TEXT NOT NULL, sequence TEXT NOT NULL,
    received INTEGER NOT NULL, via TEXT, text TEXT NOT NULL, "check" TEXT NOT NULL,
    PRIMARY KEY (walk, "offset"), UNIQUE (walk, source, id));
  CREATE TABLE refused (
    number INTEGER PRIMARY KEY AUTOINCREMENT, walk TEXT NOT NULL,
    received INTEGER NOT NULL, reason TEXT NOT NULL, text TEXT NOT NULL);
  ${SOURCES}
  CREATE INDEX refused_by_walk ON refused (walk, number);
  CREATE TABLE keep (key TEXT PRIMARY KEY, value TEXT NOT NULL) WITHOUT ROWID;
  PRAGMA application_id = ${APPLICATION};
  PRAGMA user_version = ${VERSION};
`;

/** Makes the tables in a database that has none. */
export function makeSchema(database: Database.Database): void {
  database.exec(`BEGIN; ${SCHEMA} COMMIT;`);
}

/** Throws {@link EngineTroubleError} unless a database is a hub's, of a version that can be read. */
export function insistOnOwn(database: Database.Database, file: string): void {
  if (database.pragma("application_id", { simple: true }) !== APPLICATION) {
    throw new EngineTroubleError(message("engine/other-file", { file }));
  }
  const version = Number(database.pragma("user_version", { simple: true }));
  if (version >= 1 && version <= VERSION) return;
  const key = version > VERSION ? "engine/newer-version" : "engine/other-version";
  throw new EngineTroubleError(message(key, { file, version, known: VERSION }));
}

/** Throws {@link EngineTroubleError} when a database is damaged. `size` is that of its file, in bytes. */
export function insistOnSound(database: Database.Database, file: string, size: number): void {
  if (size > LARGEST_READ_THROUGH) return;
  const found = database.pragma("quick_check(1)", { simple: true });
  const unsound = database
    .prepare(`
      SELECT (SELECT count(*) FROM entries WHERE NOT json_valid(text)) + (
        SELECT count(*) FROM walks WHERE (entries, head) IS NOT (
          SELECT count(*), coalesce(max("offset"), 0) FROM entries WHERE entries.walk = walks.number))`)
    .pluck()
    .get();
  if (found === "ok" && unsound === 0) return;
  throw new EngineTroubleError(
    message("engine/unsound", { file, found: String(found), unsound: String(unsound) }),
  );
}

interface ChainedRow {
  readonly walk: number;
  readonly offset: number;
  readonly text: string;
  readonly check: string;
}

/** Throws {@link EngineTroubleError} when the checks of entries do not follow one another: a log put together from two. */
export function insistOnChain(database: Database.Database, file: string, size: number): void {
  if (size > LARGEST_READ_THROUGH) return;
  let [walk, before] = [0, ""];
  const rows = database
    .prepare<[], ChainedRow>('SELECT walk, "offset", text, "check" FROM entries ORDER BY walk, "offset"')
    .iterate();
  for (const row of rows) {
    if (row.walk !== walk) [walk, before] = [row.walk, ""];
    before = chained(before, row.text);
    if (row.check === before) continue;
    throw new EngineTroubleError(
      message("engine/unsound", { file, found: `${row.walk}:${row.offset}`, unsound: "1" }),
    );
  }
}

/** Brings a database of an earlier version to the present one, whole or not at all. */
export function migrate(database: Database.Database): void {
  const version = Number(database.pragma("user_version", { simple: true }));
  if (version >= VERSION) return;
  database.transaction(() => {
    if (version < 2) addChecks(database);
    database.exec(SOURCES);
    database.exec(
      "INSERT INTO sources SELECT walk, source, sum(length(text)) FROM entries GROUP BY walk, source",
    );
    database.pragma(`user_version = ${VERSION}`);
  })();
}

function addChecks(database: Database.Database): void {
  database.exec(`ALTER TABLE entries ADD COLUMN "check" TEXT NOT NULL DEFAULT ''`);
  const put = database.prepare('UPDATE entries SET "check" = ? WHERE walk = ? AND "offset" = ?');
  const next = database.prepare<[number, number], ChainedRow>(
    'SELECT walk, "offset", text, "check" FROM entries WHERE walk = ? AND "offset" > ? ORDER BY "offset" LIMIT 500',
  );
  for (const walk of database.prepare<[], number>("SELECT number FROM walks").pluck().all()) {
    let [after, before] = [0, ""];
    for (let page = next.all(walk, after); page.length > 0; page = next.all(walk, after)) {
      for (const { offset, text } of page) {
        before = chained(before, text);
        put.run(before, walk, offset);
        after = offset;
      }
    }
  }
}
