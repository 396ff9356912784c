import { EngineTroubleError } from "./engine.ts";

/** What the owner of a hub can do about a failure of SQLite or of the file system, by the beginning of its code. */
const WORDS: readonly (readonly [code: string, words: (place: string) => string])[] = [
  ["SQLITE_FULL", (place) => `The disk that holds ${place} is full: make room on it.`],
  ["ENOSPC", (place) => `The disk that holds ${place} is full: make room on it.`],
  ["EDQUOT", (place) => `The disk that holds ${place} is full: make room on it.`],
  [
    "SQLITE_READONLY",
    (place) => `${place} may not be written: give the hub a data folder that it may write.`,
  ],
  ["SQLITE_CANTOPEN", (place) => `${place} may not be opened: give the hub a data folder that it may write.`],
  ["SQLITE_PERM", (place) => `${place} may not be opened: give the hub a data folder that it may write.`],
  ["EACCES", (place) => `${place} may not be written: give the hub a data folder that it may write.`],
  ["EPERM", (place) => `${place} may not be written: give the hub a data folder that it may write.`],
  ["EROFS", (place) => `${place} may not be written: give the hub a data folder that it may write.`],
  // What mkdir says in a file system of the kernel, and of a link to nowhere.
  ["ENOENT", (place) => `${place} cannot be made: give the hub a data folder that it may write.`],
  ["ENOTDIR", (place) => `${place} is not in a folder: give the hub a data folder.`],
  ["EEXIST", (place) => `${place} is not a folder: give the hub a data folder.`],
  ["SQLITE_NOTADB", (place) => `${place} is not a hub's log: bring it back from a backup, or move it away.`],
  ["SQLITE_CORRUPT", (place) => `${place} is damaged: bring it back from a backup.`],
  ["SQLITE_BUSY", (place) => `Another hub is using ${place}: stop it, or give this one a folder of its own.`],
  [
    "SQLITE_LOCKED",
    (place) => `Another hub is using ${place}: stop it, or give this one a folder of its own.`,
  ],
  ["SQLITE_IOERR", (place) => `The disk that holds ${place} fails: look to the disk.`],
  ["EIO", (place) => `The disk that holds ${place} fails: look to the disk.`],
];

/** Does something with a file; a failure that its owner can do something about becomes an {@link EngineTroubleError}. */
export function withWords<T>(place: string, work: () => T): T {
  try {
    return work();
  } catch (cause) {
    throw inWords(place, cause);
  }
}

/** A failure, as a sentence for the owner of the hub where there is one. */
export function inWords(place: string, cause: unknown): unknown {
  if (!(cause instanceof Error) || cause instanceof EngineTroubleError) return cause;
  const code = "code" in cause ? String(cause.code) : "";
  const words = WORDS.find(([beginning]) => code.startsWith(beginning))?.[1](place);
  return words === undefined ? cause : new EngineTroubleError(`${words} (${code})`, { cause });
}
