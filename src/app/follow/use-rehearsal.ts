import { useCallback, useEffect, useMemo, useState } from "react";
import { isPracticeWalk } from "../../core/practice/index.ts";
import { surprisedCrew } from "../../core/training/index.ts";
import type { Instant } from "../../core/units/index.ts";
import type { Ledger } from "../../core/walk/index.ts";
import { nextPlayedMove, playedTimesOf } from "../../core/walk/index.ts";
import type { WalkSession } from "../session/index.ts";
import { PacedClock, sharePlayedClock } from "../session/index.ts";

/** The paces a rehearsal can be played at. */
export const PACES = [1, 5, 20, 60] as const;

/** How often the simulated crew checks the clock, in ms. */
const LOOK = 250;

/** A rehearsal: its own clock, and a crew that the program simulates. */
export interface Rehearsal {
  readonly now: () => Instant;
  readonly playing: boolean;
  readonly pace: number;
  play(on: boolean): void;
  setPace(pace: number): void;
}

/** The seed of a rehearsal, derived from the walk's id so that a reload plays the same walk in the same way. */
function seedOf(walk: string): number {
  return [...walk].reduce((seed, letter) => (Math.imul(seed, 31) + (letter.codePointAt(0) ?? 0)) | 0, 7);
}

/**
 * Simulates the crew of a rehearsal: whatever is due by the rehearsal's clock is entered just as taps are. It is
 * stopped at first, at the time of the last entry.
 */
export function useRehearsal(
  session: WalkSession,
  wall: () => Instant,
  ledger: Ledger | null,
  lastAt: Instant | null,
): Rehearsal {
  const [playing, setPlaying] = useState(false);
  const [pace, setPaceShown] = useState<number>(PACES[1]);
  const isReady = ledger !== null;
  // The clock starts at the end of the log as it was first read. Later entries must not reset it.
  // biome-ignore lint/correctness/useExhaustiveDependencies: see above.
  const clock = useMemo(() => new PacedClock(wall, lastAt ?? wall(), PACES[1]), [session, wall, isReady]);
  const times = useMemo(() => playedTimesOf(seedOf(session.walk)), [session]);

  useEffect(() => {
    if (!playing) return;
    let busy = false;
    const look = async () => {
      if (busy) return;
      busy = true;
      try {
        for (;;) {
          const current = session.folded();
          const from = current.lastAt;
          const { ledger: present } = current;
          const crew = present && surprisedCrew(present, times);
          const move =
            present && from !== null
              ? nextPlayedMove(present, crew?.times ?? times, from, crew?.turns)
              : null;
          if (!move || move.at > clock.now()) break;
          await session.enter(move.drafts);
        }
      } catch {
        // What could not be kept was not played. The crew stops where the log stops, and the bar reports the failed
        // store.
        clock.run(false);
        setPlaying(false);
      } finally {
        busy = false;
      }
    };
    const timer = setInterval(() => void look(), LOOK);
    return () => clearInterval(timer);
  }, [playing, session, clock, times]);

  const isByHand = ledger !== null && isPracticeWalk(ledger);
  useClockByHand(clock, isByHand && (ledger.phase === "running" || ledger.phase === "held"), lastAt);

  const now = useCallback(() => clock.now(), [clock]);
  const isRehearsal = ledger?.opened.mode === "rehearsal";
  useEffect(
    () => (isRehearsal ? sharePlayedClock(session.walk, now) : undefined),
    [isRehearsal, session, now],
  );
  return {
    now,
    playing,
    pace,
    play: (on) => {
      clock.run(on);
      setPlaying(on);
    },
    setPace: (next) => {
      clock.setPace(next);
      setPaceShown(next);
    },
  };
}

/** Lets the clock of a practice walk go on at the pace of the day while the screen is looked at ([PRA1]). */
function useClockByHand(clock: PacedClock, isOn: boolean, lastAt: Instant | null): void {
  useEffect(() => {
    if (isOn && lastAt !== null) clock.catchUp(lastAt);
  }, [clock, isOn, lastAt]);
  useEffect(() => {
    if (!isOn) return;
    clock.setPace(PACES[0]);
    const look = () => clock.run(!document.hidden);
    look();
    document.addEventListener("visibilitychange", look);
    return () => {
      document.removeEventListener("visibilitychange", look);
      clock.run(false);
    };
  }, [clock, isOn]);
}
