import type { Speed } from "../../core/briefing/index.ts";
import { SPEEDS } from "../../core/briefing/index.ts";
import type { Duration } from "../../core/units/index.ts";

/** What a presenter tells the windows of the audience: where the briefing stands, and how it goes on. */
export interface Presented {
  readonly kind: "stands";
  readonly presenter: string;
  readonly pet: Duration;
  readonly speed: Speed;
  readonly isPlaying: boolean;
  readonly isAsked: boolean;
}

/** What windows of one briefing say to one another: also that a presenter closed, and that an audience came. */
export type Said =
  | Presented
  | { readonly kind: "closed"; readonly presenter: string }
  | { readonly kind: "asks" };

/** A presenter of whom nothing was heard for so long, in milliseconds, may be gone. */
export const SILENCE = 4_000;

/** What a window of the audience knows. */
export interface Audience {
  /** The presenter that is followed; `null` before one was heard. */
  readonly followed: Presented | null;
  /** When the presenter was last heard, in milliseconds of a clock that never goes back. */
  readonly heardAt: number;
  readonly hasClosed: boolean;
  /** True while a second presenter speaks, who is not followed. */
  readonly hasOther: boolean;
}

export const NOBODY_YET: Audience = { followed: null, heardAt: 0, hasClosed: false, hasOther: false };

/**
 * What an audience knows once something was heard. It keeps to the first presenter until that one closes or is silent, and
 * only then follows another.
 */
export function heard(audience: Audience, said: Said, now: number): Audience {
  const { followed, heardAt, hasClosed } = audience;
  if (said.kind === "asks") return audience;
  const isFollowed = followed?.presenter === said.presenter;
  if (said.kind === "closed")
    return isFollowed ? { ...audience, hasClosed: true } : { ...audience, hasOther: false };
  if (followed === null || isFollowed || hasClosed || now - heardAt > SILENCE)
    return {
      followed: said,
      heardAt: now,
      hasClosed: false,
      hasOther: isFollowed ? audience.hasOther : false,
    };
  return { ...audience, hasOther: true };
}

/** What another window said, read as data; `null` for what is nothing of this. */
export function readSaid(data: unknown): Said | null {
  if (typeof data !== "object" || data === null || !("kind" in data)) return null;
  const said = data as Partial<Record<keyof Presented, unknown>>;
  if (said.kind === "asks") return { kind: "asks" };
  const { presenter, pet, speed, isPlaying, isAsked } = said;
  if (typeof presenter !== "string") return null;
  if (said.kind === "closed") return { kind: "closed", presenter };
  const known = SPEEDS.find((one) => one === speed);
  if (said.kind !== "stands" || typeof pet !== "number" || !Number.isFinite(pet) || known === undefined)
    return null;
  return {
    kind: "stands",
    presenter,
    pet: pet as Duration,
    speed: known,
    isPlaying: isPlaying === true,
    isAsked: isAsked === true,
  };
}

/** The name of the channel of a briefing, which windows of one device share. */
export const channelOf = (briefing: string): string => `tetherline.briefing ${briefing}`;
