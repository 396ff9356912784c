import type { cardsWords as english } from "../../english/screens/cards.ts";
import type { Translated } from "../../translated.ts";

/** The cards that are worn on the wrist. */
export const cardsWords: Translated<typeof english> = {
  "cards/wrist-cards": "手首カード",
  "cards/title": "手首カード：{$title}",
  "cards/what":
    "船外の各クルー用：自分のステップ、共同ステップ、警告・注意、異常時手順を、画面と同じ番号で示します。原寸（100 %）で印刷し、印に沿って切ってください。計画の時刻は見込みで、限度ではありません。",
  "cards/size": "大きさ",
  "cards/size-large": "90 × 122 mm、1枚に4面",
  "cards/size-medium": "58 × 122 mm、1枚に6面",
  "cards/size-small": "58 × 79 mm、1枚に9面",
  "cards/size-own": "任意の大きさ",
  "cards/width": "幅、mm",
  "cards/height": "高さ、mm",
  "cards/nobody": "この手順書に船外で作業する人がいないため、カードはありません。",
  "cards/no-plan": "計画がないため、カードに時刻は入りません。",
  "cards/foot": "{$id}、{$revision}、印刷 {$at :utc form=minute} UTC",
  "cards/task": "{$number :integer} {$title}",
  "cards/get-ahead": "{$number :integer} {$title}（余裕時タスク：時間が許す場合のみ）",
  "cards/contingency": "{$number} {$title}",
  "cards/contingency-when": "{$number} {$title}（適用条件：{$when}）",
  "cards/planned": "計画 {$at :hour-minute}",
  "cards/with": "{$crew}と共同",
  "cards/sheet": "{$crew}、用紙 {$sheet :integer}／{$of :integer}",
  "cards/card": "{$crew}、カード {$number :integer}／{$of :integer}",
  "cards/number": "{$number :integer}／{$of :integer}",
  "cards/continued": "{$step}（カード {$card :integer}の続き）",
  "cards/goes-on": "{$step}は続く：カード {$card :integer}",
};
