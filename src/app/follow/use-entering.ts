import { startTransition, useCallback, useEffect, useMemo, useState } from "react";
import type { Entry } from "../../core/log/index.ts";
import type { Duration, Instant } from "../../core/units/index.ts";
import type { Ledger } from "../../core/walk/index.ts";
import { words } from "../../words/index.ts";
import { errorWords } from "../parts/index.ts";
import type { WalkSession } from "../session/index.ts";
import { storedFollower, storeFollower } from "../session/index.ts";
import type { FollowActions } from "./follow-actions.ts";
import { followActions } from "./follow-actions.ts";
import type { TapRefusal } from "./tap-guard.ts";

/** What a follower enters on this screen: under whose name, which entry was made last, and which could not be kept. */
export interface Entering {
  readonly actions: FollowActions;
  readonly actor: string;
  readonly setActor: (actor: string) => void;
  /** Takes back entries of this device. */
  readonly undo: (entries: readonly Entry[]) => void;
  /** Says that a tap did not count; a second tap of a double tap needs no words. */
  readonly refused: (refusal: TapRefusal) => void;
  /** What is said of a tap that did not count; `null` when there is nothing to say. */
  readonly remark: string | null;
  /** Why the last entry could not be kept; `null` when it was kept. */
  readonly failure: string | null;
  readonly hideFailure: () => void;
}

interface EnteringParts {
  readonly session: WalkSession;
  readonly ledger: Ledger;
  /** The walk's clock. */
  readonly now: () => Instant;
  /** How far that clock is ahead of the device's own clock, whose times entries carry. */
  readonly clockOffset: Duration;
}

/** How long it is said that a tap did not count, in ms. */
const REMARK_FOR = 6_000;

/** Converts a time of the walk's clock to the device's own clock. */
const ownTime = (at: Instant, clockOffset: Duration): Instant => (at - clockOffset) as Instant;

/**
 * Lets a follower enter what happens, under the name chosen earlier on this device or else as the crew member inside.
 */
export function useEntering({ session, ledger, now, clockOffset }: EnteringParts): Entering {
  const [failure, setFailure] = useState<string | null>(null);
  const [remark, setRemark] = useState<string | null>(null);
  const refused = useCallback((refusal: TapRefusal) => {
    if (refusal === "moved") setRemark(words("follow/tap-moved"));
  }, []);
  const inside = ledger.inForce.outline.crew.find(({ station }) => station === "inside")?.id;
  const [actor, setActor] = useState<string>(() => storedFollower() ?? inside ?? "follower");
  const actions = useMemo(
    () =>
      followActions({
        session,
        now: () => ownTime(now(), clockOffset),
        ownTime: (at) => ownTime(at, clockOffset),
        actor,
        entered: () => startTransition(() => setRemark(null)),
        failed: (error) => setFailure(words("follow/not-kept", { why: errorWords(error) })),
      }),
    [session, now, clockOffset, actor],
  );
  useEffect(() => {
    if (remark === null) return;
    const timer = setTimeout(() => setRemark(null), REMARK_FOR);
    return () => clearTimeout(timer);
  }, [remark]);
  return {
    actions,
    actor,
    setActor: (next) => {
      setActor(next);
      storeFollower(next);
    },
    undo: (entries) => void actions.undo(entries),
    refused,
    remark,
    failure,
    hideFailure: () => setFailure(null),
  };
}
