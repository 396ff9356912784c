import type { effectWords as english } from "../../english/screens/effect.ts";
import type { Translated } from "../../translated.ts";

/** What changes come to: the finish, what is left, the findings that come and go. */
export const effectWords: Translated<typeof english> = {
  "effect/same-finish": "يبقى الانتهاء كما هو.",
  "effect/later": "يتأخر الانتهاء {$by :length}.",
  "effect/earlier": "يتقدم الانتهاء {$by :advance}.",
  "effect/none": "لا يوجد",
  "effect/over": "تجاوز بمقدار {$time :length}",
  "effect/spare": "{$time :margin}",
  "effect/findings-new": "مآخذ جديدة",
  "effect/findings-gone": "مآخذ تزول",
  "effect/no-findings": "لا يظهر معه مأخذ ولا يزول.",
};
