import { UnreadableEntryError } from "../../core/log/index.ts";
import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";

/** Why a store on disk cannot be used (any more). */
export type StoreTrouble =
  /** The browser has no IndexedDB. */
  | "missing"
  /** The browser does not let this page store anything. */
  | "denied"
  /** There is no storage space left. */
  | "full"
  /** Another tab holds the store, or the browser did not answer in time. */
  | "blocked"
  /** The store was made by a newer version of this program. */
  | "newer"
  /** The store was closed or wiped while in use. */
  | "lost"
  /** Anything else that the browser reports. */
  | "failed";

const TROUBLES: Readonly<Record<string, StoreTrouble>> = {
  MissingAPIError: "missing",
  SecurityError: "denied",
  NotAllowedError: "denied",
  QuotaExceededError: "full",
  TimeoutError: "blocked",
  VersionError: "newer",
  ReplacedDatabaseError: "lost",
  DatabaseClosedError: "lost",
  InvalidStateError: "lost",
  NoSuchDatabaseError: "lost",
};

/** What happened, for the reader: one sentence. */
export function troubleMessage(trouble: StoreTrouble): Message {
  return message(`store/${trouble}`);
}

const MISTAKES = [UnreadableEntryError, TypeError, RangeError, ReferenceError, SyntaxError] as const;

/**
 * What an error thrown by a store means. `null` when it is no trouble of the store but a mistake of this program, which
 * must not be hidden. A failed commit arrives as an `AbortError` that wraps the reason, hence the look inside.
 */
export function troubleOf(error: unknown): StoreTrouble | null {
  let isMistake = false;
  for (let cause = error, depth = 0; cause instanceof Error && depth < 5; depth += 1) {
    const trouble = TROUBLES[cause.name];
    if (trouble) return trouble;
    isMistake ||= MISTAKES.some((kind) => cause instanceof kind);
    cause = (cause as { inner?: unknown }).inner ?? cause.cause;
  }
  return isMistake ? null : "failed";
}

/** What an error on opening means: a store that is closed already then was refused (private windows). */
export function troubleOnOpening(error: unknown): StoreTrouble | null {
  const trouble = troubleOf(error);
  return trouble === "lost" ? "denied" : trouble;
}
