import type { Duration } from "../units/index.ts";
import type { Briefing } from "./briefing.ts";
import type { Speed } from "./playback.ts";

/** How many pictures a film has in a second. */
export const FILM_RATE = 12;

/** For how many pictures the last moment stands, so that its caption can be read: two seconds. */
const LAST = 2 * FILM_RATE;

/** A briefing as pictures at an even pace ([BRF6]). */
export interface Film {
  readonly speed: Speed;
  /** How many pictures it has. */
  readonly pictures: number;
  /** How long it lasts. */
  readonly length: Duration;
  /** The PET of a picture, counted from 0: it begins at PET 0 and comes to the finish, which stands for two seconds. */
  readonly petOf: (picture: number) => Duration;
}

/** The film of a briefing at a speed. */
export function filmOf({ finish }: Pick<Briefing, "finish">, speed: Speed): Film {
  const moving = Math.ceil((finish * FILM_RATE) / (1000 * speed));
  const pictures = moving + LAST;
  return {
    speed,
    pictures,
    length: Math.ceil((pictures * 1000) / FILM_RATE) as Duration,
    petOf: (picture) => Math.min(finish, Math.floor((picture * 1000 * speed) / FILM_RATE)) as Duration,
  };
}
