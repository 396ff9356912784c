import type { effectWords as english } from "../../english/screens/effect.ts";
import type { Translated } from "../../translated.ts";

/** What changes come to: the finish, what is left, the findings that come and go. */
export const effectWords: Translated<typeof english> = {
  "effect/same-finish": "Das Ende bleibt, wie es ist.",
  "effect/later": "Das Ende kommt {$by :length} später.",
  "effect/earlier": "Das Ende kommt {$by :advance} früher.",
  "effect/none": "keines",
  "effect/over": "{$time :length} über dem Zeitlimit",
  "effect/spare": "{$time :margin}",
  "effect/findings-new": "Neue Befunde",
  "effect/findings-gone": "Befunde, die wegfallen",
  "effect/no-findings": "Damit kommt kein Befund hinzu, und keiner fällt weg.",
};
