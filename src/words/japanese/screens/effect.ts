import type { effectWords as english } from "../../english/screens/effect.ts";
import type { Translated } from "../../translated.ts";

/** What changes come to: the finish, what is left, the findings that come and go. */
export const effectWords: Translated<typeof english> = {
  "effect/same-finish": "終了は変わりません。",
  "effect/later": "終了が{$by :length}遅くなります。",
  "effect/earlier": "終了が{$by :advance}早くなります。",
  "effect/none": "なし",
  "effect/over": "{$time :length}超過",
  "effect/spare": "{$time :margin}",
  "effect/findings-new": "新しい指摘",
  "effect/findings-gone": "消える指摘",
  "effect/no-findings": "これによる指摘の増減はありません。",
};
