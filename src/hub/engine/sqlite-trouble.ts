import { message } from "../../words/index.ts";
import { EngineTroubleError } from "./engine.ts";

/** What the owner of a hub can do about a failure of SQLite or of the file system, by the beginning of its code. */
const TROUBLES = [
  ["SQLITE_FULL", "engine/disk-full"],
  ["ENOSPC", "engine/disk-full"],
  ["EDQUOT", "engine/disk-full"],
  ["SQLITE_READONLY", "engine/not-written"],
  ["SQLITE_CANTOPEN", "engine/not-opened"],
  ["SQLITE_PERM", "engine/not-opened"],
  ["EACCES", "engine/not-written"],
  ["EPERM", "engine/not-written"],
  ["EROFS", "engine/not-written"],
  // What mkdir says in a file system of the kernel, and of a link to nowhere.
  ["ENOENT", "engine/not-made"],
  ["ENOTDIR", "engine/not-in-folder"],
  ["EEXIST", "engine/not-a-folder"],
  ["SQLITE_NOTADB", "engine/not-a-log"],
  ["SQLITE_CORRUPT", "engine/damaged"],
  ["SQLITE_BUSY", "engine/another-hub"],
  ["SQLITE_LOCKED", "engine/another-hub"],
  ["SQLITE_IOERR", "engine/disk-fails"],
  ["EIO", "engine/disk-fails"],
] as const;

/** Does something with a file; a failure that its owner can do something about becomes an {@link EngineTroubleError}. */
export function withTrouble<T>(place: string, work: () => T): T {
  try {
    return work();
  } catch (cause) {
    throw troubleOf(place, cause);
  }
}

/** A failure, as a sentence for the owner of the hub where there is one. */
export function troubleOf(place: string, cause: unknown): unknown {
  if (!(cause instanceof Error) || cause instanceof EngineTroubleError) return cause;
  const code = "code" in cause ? String(cause.code) : "";
  const key = TROUBLES.find(([beginning]) => code.startsWith(beginning))?.[1];
  if (key === undefined) return cause;
  return new EngineTroubleError(message("engine/with-code", { what: message(key, { place }), code }), {
    cause,
  });
}
