import { useCallback, useEffect, useState } from "react";
import type { Briefing, Playback, Speed } from "../../core/briefing/index.ts";
import {
  atSpeed,
  chapterAfter,
  chapterBefore,
  cueAfter,
  cueBefore,
  isPlaying,
  openedPlayback,
  paused,
  pausedAt,
  petOf,
  played,
} from "../../core/briefing/index.ts";
import type { Duration } from "../../core/units/index.ts";
import { NO_TIME } from "../../core/units/index.ts";
import type { ShownPet } from "../worksite/index.ts";
import { MovingPet } from "../worksite/index.ts";

/** A briefing that is played on a screen. */
export interface Played {
  /** Where it stands, at each picture. */
  readonly shown: ShownPet;
  readonly speed: Speed;
  readonly isPlaying: boolean;
  readonly toggle: () => void;
  readonly pause: () => void;
  readonly choose: (speed: Speed) => void;
  readonly go: (pet: Duration) => void;
  readonly step: (way: "on" | "back") => void;
  readonly task: (way: "on" | "back") => void;
  /** Goes where another window stands, and on with it. */
  readonly follow: (at: {
    readonly pet: Duration;
    readonly speed: Speed;
    readonly isPlaying: boolean;
  }) => void;
}

const clock = () => performance.now();

/**
 * Plays a briefing by the page's monotonic clock. `stopFrom` names the PET at which it is to stop by itself when it is
 * played from a PET on.
 */
export function usePlayback(briefing: Briefing, stopFrom: (pet: Duration) => Duration): Played {
  const { finish } = briefing;
  const [playback, setPlayback] = useState<Playback>(() => openedPlayback(finish));
  const [shown] = useState(() => new MovingPet(NO_TIME));
  const [isMoving, setIsMoving] = useState(false);
  useEffect(() => {
    let frame = 0;
    const draw = () => {
      const now = clock();
      const moves = isPlaying(playback, now);
      setIsMoving(moves);
      shown.move(petOf(playback, now));
      if (moves) frame = requestAnimationFrame(draw);
    };
    draw();
    // A page that was hidden is at the right moment as soon as it is seen.
    document.addEventListener("visibilitychange", draw);
    return () => {
      cancelAnimationFrame(frame);
      document.removeEventListener("visibilitychange", draw);
    };
  }, [playback, shown]);
  const go = useCallback((to: Duration) => setPlayback((was) => pausedAt(was, to, finish)), [finish]);
  const at = () => petOf(playback, clock());
  return {
    shown,
    speed: playback.speed,
    isPlaying: isMoving,
    toggle: () => {
      const now = clock();
      if (isPlaying(playback, now)) return setPlayback(paused(playback, now));
      const from = at() >= finish ? pausedAt(playback, NO_TIME, finish) : playback;
      setPlayback(played(from, now, stopFrom(petOf(from, now))));
    },
    pause: () => setPlayback((was) => paused(was, clock())),
    choose: (speed) => setPlayback((was) => atSpeed(was, clock(), speed)),
    go,
    step: (way) =>
      go(
        way === "on"
          ? (cueAfter(briefing, at())?.pet ?? finish)
          : (cueBefore(briefing, at())?.pet ?? NO_TIME),
      ),
    task: (way) =>
      go(
        way === "on"
          ? (chapterAfter(briefing, at())?.start ?? finish)
          : (chapterBefore(briefing, at())?.start ?? NO_TIME),
      ),
    follow: useCallback(
      (other) =>
        setPlayback((was) => {
          const there = { ...pausedAt(was, other.pet, finish), speed: other.speed };
          return other.isPlaying ? played(there, clock(), finish) : there;
        }),
      [finish],
    ),
  };
}
