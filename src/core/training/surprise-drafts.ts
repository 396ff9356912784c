import type { Draft } from "../log/index.ts";
import type { Instant, WalkId } from "../units/index.ts";
import { obscured } from "./obscured.ts";
import type { Surprise } from "./surprises-file.ts";

/** Who enters surprises, at an instant. */
interface EnteredBy {
  readonly walk: WalkId;
  readonly at: Instant;
  readonly actor: string;
}

/** The entries by which a rehearsal carries surprises that come when they say themselves ([TRN2]). */
export function laidDrafts(surprises: readonly Surprise[], { walk, at, actor }: EnteredBy): readonly Draft[] {
  return surprises.map((surprise) => ({
    name: "surprise.laid",
    data: { surprise: obscured(walk, surprise) },
    at,
    actor,
  }));
}

/** The entry by which a trainer lets a surprise come now ([TRN2]). */
export function firedDraft(surprise: Surprise, { walk, at, actor }: EnteredBy): Draft {
  return { name: "surprise.fired", data: { surprise: obscured(walk, surprise) }, at, actor };
}
