import type { effectWords as english } from "../../english/screens/effect.ts";
import type { Translated } from "../../translated.ts";

/** What changes come to: the finish, what is left, the findings that come and go. */
export const effectWords: Translated<typeof english> = {
  "effect/same-finish": "La fin reste la même.",
  "effect/later": "La fin vient {$by :length} plus tard.",
  "effect/earlier": "La fin vient {$by :advance} plus tôt.",
  "effect/none": "aucune",
  "effect/over": "{$time :length} de trop",
  "effect/spare": "{$time :margin}",
  "effect/findings-new": "Nouveaux constats",
  "effect/findings-gone": "Constats qui disparaissent",
  "effect/no-findings": "Aucun constat n’apparaît ni ne disparaît.",
};
