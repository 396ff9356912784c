import { useCallback, useMemo } from "react";
import type { Instant } from "../../core/units/index.ts";
import type { Folded, Ledger, WalkState } from "../../core/walk/index.ts";
import { walkStateAt } from "../../core/walk/index.ts";
import { secondsOf } from "../../io/clock/index.ts";
import type { WalkSession } from "../session/index.ts";
import { beatsOf, useSeconds } from "../session/index.ts";
import type { Rehearsal } from "./use-rehearsal.ts";
import { useRehearsal } from "./use-rehearsal.ts";

/** The present of a walk on this screen. */
export interface WalkNow {
  /** The walk's clock: the one given for a live walk, the rehearsal's own, or that of the last entry for one who looks on. */
  readonly now: () => Instant;
  /** The instant that is shown, which moves on with each second and with each entry. */
  readonly at: Instant;
  readonly state: WalkState;
  readonly rehearsal: Rehearsal;
}

interface WalkNowParts {
  readonly session: WalkSession;
  readonly folded: Folded;
  readonly ledger: Ledger;
  readonly clock: () => Instant;
  /** False on a device that looks on while another plays the rehearsal. */
  readonly playsHere: boolean;
}

/** An entry that lies less than this behind the last tick, in ms, has just been made. */
const JUST_MADE = 1500;

/** Keeps up with the present of a walk, second by second. */
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
  // An entry just made may lie a little after the last tick; the state must not be asked for a time before it.
  const isJustMade = lastAt !== null && mode === "live" && lastAt > second && lastAt - second < JUST_MADE;
  const at = isJustMade ? lastAt : second;
  const state = useMemo(() => walkStateAt(ledger, at), [ledger, at]);
  return { now, at, state, rehearsal };
}
