import type { EntryStore } from "../../core/log/index.ts";
import type { WalkId } from "../../core/units/index.ts";
import { WalkSession } from "./walk-session.ts";

/** A walk that is read before anybody opens it. */
interface Ahead {
  readonly store: EntryStore;
  readonly session: WalkSession;
  /** Comes once the log is read, with what stops following it. */
  readonly following: Promise<() => void>;
}

let ahead: Ahead | null = null;

/** Lets go of what was read ahead. */
function release({ following }: Ahead): void {
  // A log that cannot be read is told of to whoever opens the walk.
  following.then(
    (stop) => stop(),
    () => {},
  );
}

/**
 * Reads a walk before it is opened and follows it meanwhile, so that opening it shows it as it is at that moment. One
 * walk at a time. Rejects when the log cannot be read.
 */
export async function readAhead(store: EntryStore, walk: WalkId): Promise<void> {
  if (ahead) release(ahead);
  const session = new WalkSession(store, walk);
  ahead = { store, session, following: session.follow() };
  await ahead.following;
}

/**
 * The session of a walk that was read ahead, or is being read; `null` when it is not. Whoever opens it goes on with it. Another one that was read ahead is let go of.
 */
export function takeReadAhead(store: EntryStore, walk: WalkId): WalkSession | null {
  const taken = ahead;
  ahead = null;
  if (!taken) return null;
  release(taken);
  return taken.store === store && taken.session.walk === walk ? taken.session : null;
}
