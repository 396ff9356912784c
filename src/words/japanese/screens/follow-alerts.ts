import type { followAlertWords as english } from "../../english/screens/follow-alerts.ts";
import type { Translated } from "../../translated.ts";

/** The one place of alerts on the follow screen, and the list behind it. */
export const followAlertWords: Translated<typeof english> = {
  "alert/level-act-now": "即対応",
  "alert/level-look-soon": "早めに確認",
  "alert/level-know": "情報",
  "alert/alerts": "アラート",
  "alert/since": "PET {$since :clock}から。",
  "alert/seen-by": "{$who}が確認済み。",
  "alert/seen": "確認した",
  "alert/step": "ステップ {$number}",
  "alert/more": "ほか{$count :integer}件",
  "alert/none": "現在のアラートはありません。",
  "alert/sounds": "この端末で音と振動を出す対象",
  "alert/raised-so-far": "これまでの発生",
  "alert/raised-at": "PET {$at :clock}",
  "alert/how":
    "アラートは知らせるだけで、指示はしません。判断は飛行規則と運用責任者によります。「即対応」は解消するまで、ほかは確認されるまで表示されます。",
};
