import { useCallback, useMemo } from "react";
import { isPracticeWalk } from "../../core/practice/index.ts";
import type { Instant } from "../../core/units/index.ts";
import type { Folded, Ledger, WalkState } from "../../core/walk/index.ts";
import { walkStateAt } from "../../core/walk/index.ts";
import { secondsOf } from "../../io/clock/index.ts";
import type { WalkSession } from "../session/index.ts";
import { beatsOf, useSeconds } from "../session/index.ts";
import type { Rehearsal } from "./use-rehearsal.ts";
import { useRehearsal } from "./use-rehearsal.ts";

/** The present moment of a walk, as this screen shows it. */
export interface WalkNow {
  /**
   * The walk's clock: the given clock for a live walk, the rehearsal's own clock, or the time of the last entry on a
   * device that only watches a rehearsal.
   */
  readonly now: () => Instant;
  /** The instant that is shown. It moves on with each second and each entry. */
  readonly at: Instant;
  readonly state: WalkState;
  readonly rehearsal: Rehearsal;
}

interface WalkNowParts {
  readonly session: WalkSession;
  readonly folded: Folded;
  readonly ledger: Ledger;
  readonly clock: () => Instant;
  /** False on a device that watches while another plays the rehearsal. */
  readonly playsHere: boolean;
}

/** An entry at most this much later than the last tick, in ms, was just made. */
const JUST_MADE = 1500;

/** Keeps up with the present moment of a walk, second by second. */
export function useWalkNow({ session, folded, ledger, clock, playsHere }: WalkNowParts): WalkNow {
  const { mode } = ledger.opened;
  const { lastAt } = folded;
  const rehearsal = useRehearsal(session, clock, ledger, lastAt);
  const lookedOn = useCallback(() => session.folded().lastAt ?? clock(), [session, clock]);
  const now = mode === "live" ? clock : playsHere ? rehearsal.now : lookedOn;
  const seconds = useMemo(
    () =>
      mode === "rehearsal"
        ? beatsOf(now)
        : secondsOf({ clock: now, ...(ledger.petZero === null ? {} : { from: ledger.petZero }) }),
    [mode, now, ledger.petZero],
  );
  const second = useSeconds(seconds);
  // An entry that was just made may be a little later than the last tick. The state must not be computed for a time
  // before it.
  const isByHand = mode === "live" || isPracticeWalk(ledger);
  const isJustMade = lastAt !== null && isByHand && lastAt > second && lastAt - second < JUST_MADE;
  const at = isJustMade ? lastAt : second;
  const state = useMemo(() => walkStateAt(ledger, at), [ledger, at]);
  return { now, at, state, rehearsal };
}
