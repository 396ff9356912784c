import type { Duration } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";

/** What is left of a time, or by how much it is passed; `none` where there is no such time. */
export const spareWords = (time: Duration | null): string =>
  time === null
    ? words("effect/none")
    : words(time < 0 ? "effect/over" : "effect/spare", { time: (time < 0 ? -time : time) as Duration });

/** The PET of a finish, or what is said where there is none. */
export const finishWords = (at: Duration | null, otherwise: string): string =>
  at === null ? otherwise : words("panel/at", { at });
