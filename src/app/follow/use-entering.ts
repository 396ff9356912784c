import { startTransition, useCallback, useEffect, useMemo, useState } from "react";
import type { Duration, Instant } from "../../core/units/index.ts";
import type { Ledger } from "../../core/walk/index.ts";
import { words } from "../../words/index.ts";
import { errorWords } from "../parts/index.ts";
import type { WalkSession } from "../session/index.ts";
import { storedFollower, storeFollower } from "../session/index.ts";
import type { FollowActions, JustEntered } from "./follow-actions.ts";
import { followActions } from "./follow-actions.ts";
import type { TapRefusal } from "./tap-guard.ts";

/** What a follower enters on this screen: under whose name, which entry was made last, and which could not be kept. */
export interface Entering {
  readonly actions: FollowActions;
  readonly actor: string;
  readonly setActor: (actor: string) => void;
  /** The entry that was just made and can be undone; `null` when there is none. */
  readonly just: JustEntered | null;
  readonly undo: () => void;
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

/** How long the undo of the last entry is offered, in ms. */
const UNDO_FOR = 10_000;

/** How long it is said that a tap did not count, in ms. */
const REMARK_FOR = 6_000;

/** Converts a time of the walk's clock to the device's own clock. */
const ownTime = (at: Instant, clockOffset: Duration): Instant => (at - clockOffset) as Instant;

/**
 * Lets a follower enter what happens, under the name chosen earlier on this device or else as the crew member inside.
 */
export function useEntering({ session, ledger, now, clockOffset }: EnteringParts): Entering {
  const [just, setJust] = useState<JustEntered | null>(null);
  const [failure, setFailure] = useState<string | null>(null);
  const [remark, setRemark] = useState<string | null>(null);
  const refused = useCallback((refusal: TapRefusal) => {
    if (refusal === "moved") setRemark(words("follow/tap-moved"));
  }, []);
  const inside = ledger.inForce.outline.crew.find(({ station }) => station === "inside")?.id;
  const [actor, setActor] = useState<string>(() => storedFollower() ?? inside ?? "follower");
  const actions = useMemo(
    () =>
      // The step itself is drawn first, and the button that undoes it right after.
      followActions({
        session,
        now: () => ownTime(now(), clockOffset),
        actor,
        entered: (entered) =>
          startTransition(() => {
            setJust(entered);
            setRemark(null);
          }),
        failed: (error) => setFailure(words("follow/not-kept", { why: errorWords(error) })),
      }),
    [session, now, clockOffset, actor],
  );
  useEffect(() => {
    if (!just) return;
    const timer = setTimeout(() => setJust(null), UNDO_FOR);
    return () => clearTimeout(timer);
  }, [just]);
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
    just,
    undo: () => {
      if (!just) return;
      setJust(null);
      void actions.strike(just);
    },
    refused,
    remark,
    failure,
    hideFailure: () => setFailure(null),
  };
}
