import type { Duration } from "../units/index.ts";
import { NO_TIME } from "../units/index.ts";

/** How many seconds of the walk may pass in one second of the briefing. */
export const SPEEDS = [1, 2, 5, 10, 30, 60, 120] as const;

/** One of the speeds of a briefing. */
export type Speed = (typeof SPEEDS)[number];

/**
 * Where a briefing stands and how it goes on. The PET is worked out from one reading of a clock that never goes back, and
 * never added up picture by picture, so that a page that was hidden for a while is at the right moment when it comes back.
 */
export interface Playback {
  readonly speed: Speed;
  /** The PET at the reading `since`; while it is paused, the PET shown. */
  readonly pet: Duration;
  /** Milliseconds of that clock; `null` while it is paused. */
  readonly since: number | null;
  /** The PET at which it stops by itself. */
  readonly until: Duration;
}

/** A briefing at its beginning, paused. */
export function openedPlayback(until: Duration): Playback {
  return { speed: 10, pet: NO_TIME, since: null, until };
}

/** The PET at a reading of the clock, in whole milliseconds. It stays at `until` when that is reached. */
export function petOf({ speed, pet, since, until }: Playback, now: number): Duration {
  if (since === null || pet >= until) return pet;
  const gone = Math.floor(Math.max(0, now - since) * speed);
  return Math.min(until, pet + gone) as Duration;
}

/** True while it moves: it was told to play and has not come to where it stops. */
export function isPlaying(playback: Playback, now: number): boolean {
  return playback.since !== null && petOf(playback, now) < playback.until;
}

/** Plays on from where it stands up to `until`. */
export function played(playback: Playback, now: number, until: Duration): Playback {
  return { ...playback, pet: petOf(playback, now), since: now, until };
}

/** Stops where it stands. */
export function paused(playback: Playback, now: number): Playback {
  return { ...playback, pet: petOf(playback, now), since: null };
}

/** Goes on at another speed from where it stands. */
export function atSpeed(playback: Playback, now: number, speed: Speed): Playback {
  const since = playback.since === null ? null : now;
  return { ...playback, pet: petOf(playback, now), since, speed };
}

/** Pauses at another PET, which is held between zero and `finish`. */
export function pausedAt(playback: Playback, pet: Duration, finish: Duration): Playback {
  const held = Math.min(finish, Math.max(0, pet)) as Duration;
  return { ...playback, pet: held, since: null };
}

/** Above this speed a step of three minutes is gone before its caption is read, and captions speak of tasks ([BRF1]). */
const FASTEST_BY_STEP = 60;

/** Whether captions at a speed speak of steps or of tasks. */
export function captionGrain(speed: Speed): "step" | "task" {
  return speed > FASTEST_BY_STEP ? "task" : "step";
}
