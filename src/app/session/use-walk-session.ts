import { useEffect, useState, useSyncExternalStore } from "react";
import type { WalkId } from "../../core/units/index.ts";
import type { Folded } from "../../core/walk/index.ts";
import { words } from "../../words/index.ts";
import { takeReadAhead } from "./read-ahead.ts";
import { useServices } from "./services.ts";
import { WalkSession } from "./walk-session.ts";

/** A walk that is open on a screen. */
export interface OpenedWalk {
  readonly session: WalkSession;
  readonly folded: Folded;
  /** False until the log has been read once. */
  readonly isRead: boolean;
  /** Why the log could not be read; `null` when it was read. */
  readonly problem: string | null;
}

/** Opens a walk for a screen and follows it as long as the screen is mounted. */
export function useWalkSession(walk: WalkId): OpenedWalk {
  const { store } = useServices();
  const begin = () => takeReadAhead(store.log, walk) ?? new WalkSession(store.log, walk);
  const [session, setSession] = useState(begin);
  if (session.walk !== walk) setSession(begin());
  const [read, setRead] = useState<{ readonly of: WalkSession; readonly problem: string | null } | null>(
    null,
  );
  useEffect(() => {
    let end = () => {};
    let isOver = false;
    session.follow().then(
      (stop) => {
        if (isOver) stop();
        else end = stop;
        setRead({ of: session, problem: null });
      },
      (error: unknown) =>
        setRead({
          of: session,
          problem: error instanceof Error ? error.message : words("shelf/message-unknown"),
        }),
    );
    return () => {
      isOver = true;
      end();
    };
  }, [session]);
  const folded = useSyncExternalStore(session.subscribe, session.folded);
  const isRead = read?.of === session;
  return { session, folded, isRead, problem: isRead ? read.problem : null };
}
