import { randomBytes } from "node:crypto";
import {
  accessSync,
  closeSync,
  constants,
  existsSync,
  openSync,
  renameSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import Database from "better-sqlite3";
import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import { guardFolder, makeFolder } from "../data-folder/index.ts";
import { EngineTroubleError } from "./engine.ts";
import { isSecret, SecretFile } from "./secret-keep.ts";
import { insistOnChain, insistOnOwn, insistOnSound, makeSchema, migrate } from "./sqlite-schema.ts";
import { troubleOf, withTrouble } from "./sqlite-trouble.ts";
import {
  type FoundMarker,
  type Marker,
  markerPath,
  placeOf,
  readMarker,
  writeMarker,
} from "./store-marker.ts";

/** An open database of a hub. */
export interface OpenDatabase {
  readonly database: Database.Database;
  /** The file, for messages. */
  readonly file: string;
  readonly epoch: string;
  /** The secrets that go with it. */
  readonly secrets: SecretFile;
  /** What is to be told of how it was opened. */
  readonly findings: readonly Message[];
  /** Takes another epoch; resolved when it is durable. */
  beginEpoch(): string;
  /** Brings what was written into the main file once there is much of it. */
  settle(): void;
  /** Ends it in order. */
  close(): void;
}

/** The file of a store in its data folder. */
export const STORE_FILE = "walks.sqlite";
/** How long the process before this one may take to end, in ms. */
const PATIENCE = 2_000;
/** A write-ahead file of more bytes than this is brought into the main file. */
const LARGEST_WAL = 4 * 1024 * 1024;

const random = () => randomBytes(12).toString("base64url");

/**
 * Opens the database of a data folder, or makes one in a folder that never had one. Offsets go with an epoch. The epoch
 * stays when the files prove that they are what they were: the marker beside the store has its seal and the place of its
 * main file, which is written at moments of the hub's own choice only. In every other case the epoch is a new one. Throws
 * {@link EngineTroubleError} when the log cannot be had whole and written.
 */
export function openDatabase(folder: string): OpenDatabase {
  const file = join(folder, STORE_FILE);
  withTrouble(folder, () => makeFolder(folder));
  const marker = withTrouble(folder, () => readMarker(folder));
  if (marker !== null) insistOnFile(file, folder);
  // Check here, because SQLite would fall back to read-only access and fail later with a less helpful message.
  for (const path of [folder, file].filter(existsSync))
    withTrouble(path, () => accessSync(path, constants.W_OK));
  const findings: Message[] = guarded(folder);
  const isInPlace = marker?.place != null && existsSync(file) && placeOf(file) === marker.place;
  const leftWal = marker && !isInPlace ? withTrouble(file, () => setAsideLeftWal(file, marker)) : null;
  if (leftWal !== null) findings.push(message("engine/left-wal", { file: leftWal }));
  const hadWal = existsSync(`${file}-wal`);
  // SQLite gives its other files the rights of this one.
  if (!existsSync(file)) withTrouble(file, () => closeSync(openSync(file, "a", 0o600)));
  const database = withTrouble(file, () => connect(file));
  try {
    return withTrouble(file, () => {
      lock(database);
      if (isBlank(database)) {
        if (marker !== null) throw goneError(file, folder);
        makeSchema(database);
      } else {
        insistOnOwn(database, file);
        const { size } = statSync(file);
        insistOnSound(database, file, size);
        if (marker !== null && aboutOf(database, "open") === "yes" && !hadWal)
          throw goneError(`${file}-wal`, folder);
        migrate(database);
        if (!isInPlace) insistOnChain(database, file, size);
      }
      const secrets = new SecretFile(folder);
      const isMoved = moveSecrets(database, secrets);
      const seal = aboutOf(database, "seal");
      const isProven = isInPlace && seal !== null && marker.seals.includes(seal);
      if (!isProven && seal !== null) findings.push(message("engine/not-proven", { file }));
      if (seal !== null && !isMoved && !secrets.wasThere) findings.push(message("engine/secrets-gone"));
      if (!isMoved && !secrets.wasThere) secrets.change(new Map());
      const epoch = (isProven ? marker.epoch : undefined) ?? random();
      return new RunningStore(database, folder, { epoch, secrets, findings });
    });
  } catch (cause) {
    database.close();
    throw cause;
  }
}

/** A store in use: its marker tells at every moment where the main file is. */
class RunningStore implements OpenDatabase {
  readonly database: Database.Database;
  readonly file: string;
  readonly findings: readonly Message[];
  readonly secrets: SecretFile;
  readonly #folder: string;
  #epoch: string;
  #seal: string;
  #isMoving = false;

  constructor(
    database: Database.Database,
    folder: string,
    { epoch, secrets, findings }: Pick<OpenDatabase, "epoch" | "secrets" | "findings">,
  ) {
    this.database = database;
    this.file = join(folder, STORE_FILE);
    this.findings = findings;
    this.secrets = secrets;
    this.#folder = folder;
    this.#epoch = epoch;
    this.#seal = aboutOf(database, "seal") ?? "";
    this.#changeSeal("yes");
    this.#checkpoint();
  }

  get epoch(): string {
    return this.#epoch;
  }

  beginEpoch(): string {
    this.#epoch = random();
    withTrouble(this.file, () => this.#mark("open", [this.#seal]));
    return this.#epoch;
  }

  settle(): void {
    const size = statSync(`${this.file}-wal`, { throwIfNoEntry: false })?.size ?? 0;
    if (size > LARGEST_WAL) this.#checkpoint();
  }

  close(): void {
    const { database, file } = this;
    withTrouble(file, () => {
      try {
        this.#changeSeal("no");
        database.close();
        this.#mark("closed", [this.#seal]);
      } catch (cause) {
        database.close();
        // The store still says that it is in use, so that the next opening looks for this file.
        if (!existsSync(`${file}-wal`)) writeFileSync(`${file}-wal`, "");
        throw cause;
      }
    });
  }

  /** A copy made earlier has an earlier seal than the marker, wherever it is put. The main file is about to be written. */
  #changeSeal(open: "yes" | "no"): void {
    const [old, seal] = [this.#seal, random()];
    // When there is no marker, a crash at this point must not leave a marker without a store.
    if (old !== "") this.#mark("moving", [old, seal]);
    const put = this.database.prepare(
      "INSERT INTO about VALUES (?, ?) ON CONFLICT DO UPDATE SET value = excluded.value",
    );
    this.database.transaction(() => {
      for (const [key, value] of Object.entries({ open, seal })) put.run(key, value);
    })();
    this.#seal = seal;
  }

  /** Brings all that was written into the main file, and notes where that is then. */
  #checkpoint(): void {
    if (!this.#isMoving && existsSync(markerPath(this.#folder))) this.#mark("moving", [this.#seal]);
    this.database.pragma("wal_checkpoint(TRUNCATE)");
    this.#mark("open", [this.#seal]);
  }

  #mark(state: Marker["state"], seals: Marker["seals"]): void {
    const place = state === "moving" ? null : placeOf(this.file);
    writeMarker(this.#folder, { seals, epoch: this.#epoch, place, state });
    this.#isMoving = state === "moving";
  }
}

/**
 * Sets a write-ahead file aside that was left by the store before the one that is here: SQLite would undo with it what was
 * brought back, or make a mixture. Returns where it is then; `null` when it belongs to the main file.
 */
function setAsideLeftWal(file: string, marker: FoundMarker): string | null {
  const wal = statSync(`${file}-wal`, { throwIfNoEntry: false });
  const main = statSync(file, { throwIfNoEntry: false });
  if (!wal || !main || wal.size === 0) return null;
  // A folder that was copied as a whole: one closed in order has no such file, one in use has brought its own.
  if (marker.isCopied && marker.state !== "closed") return null;
  // The process ended while it wrote the main file, which needs the write-ahead file then.
  if (!marker.isCopied && marker.state === "moving") return null;
  if (!marker.isCopied && wal.ctimeMs >= main.ctimeMs) return null;
  let aside = `${file}-wal.left`;
  for (let number = 2; existsSync(aside); number += 1) aside = `${file}-wal.left-${number}`;
  renameSync(`${file}-wal`, aside);
  return aside;
}

/** Closes a data folder to others; what is to be told of that. Throws {@link EngineTroubleError} when it cannot be closed. */
function guarded(folder: string): Message[] {
  const { isMended, isOpen } = withTrouble(folder, () => guardFolder(folder));
  if (isOpen) throw new EngineTroubleError(message("engine/folder-open", { folder }));
  return isMended ? [message("engine/rights-mended", { folder })] : [];
}

/** Earlier versions kept secrets in the log itself. Returns whether there were any. */
function moveSecrets(database: Database.Database, secrets: SecretFile): boolean {
  const kept = database.prepare<[], { key: string; value: string }>("SELECT key, value FROM keep").all();
  const moved = kept.filter(({ key }) => isSecret(key));
  if (moved.length === 0) return false;
  secrets.change(new Map(moved.map(({ key, value }) => [key, value])));
  // What is deleted is overwritten, so that nobody finds it in the file.
  database.pragma("secure_delete = ON");
  const remove = database.prepare("DELETE FROM keep WHERE key = ?");
  database.transaction(() => {
    for (const { key } of moved) remove.run(key);
  })();
  database.pragma("secure_delete = OFF");
  return true;
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
  // The main file is written when this process says so, so that its place is known at every other moment.
  database.pragma("wal_autocheckpoint = 0");
  database.exec("BEGIN EXCLUSIVE; COMMIT;");
}

function isBlank(database: Database.Database): boolean {
  return database.prepare("SELECT count(*) FROM sqlite_schema").pluck().get() === 0;
}

function aboutOf(database: Database.Database, key: string): string | null {
  const value = database.prepare("SELECT value FROM about WHERE key = ?").pluck().get(key);
  return typeof value === "string" ? value : null;
}
