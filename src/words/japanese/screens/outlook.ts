import type { outlookWords as english } from "../../english/screens/outlook.ts";
import type { Translated } from "../../translated.ts";

/** By when a walk is over, as so many samples of ten say, and what samples miss or break. */
export const outlookWords: Translated<typeof english> = {
  "outlook/half": "半数が{$finish :finish}まで",
  "outlook/half-margin": "半数が{$finish :finish}まで、余裕 {$margin :margin}",
  "outlook/half-over": "半数が{$finish :finish}まで、{$margin :length}超過",
  "outlook/half-none": "時間帯に収まるのは半数未満",
  "outlook/nine-in-ten": "9割が{$finish :finish}まで",
  "outlook/nine-in-ten-margin": "9割が{$finish :finish}まで、余裕 {$margin :margin}",
  "outlook/nine-in-ten-over": "9割が{$finish :finish}まで、{$margin :length}超過",
  "outlook/nine-in-ten-none": "時間帯に収まるのは9割未満",
  "risk/title": "収まらない試行",
  "risk/how": "所要時間はPERTベータ分布から抽出します。割合は試行 {$samples :integer}回に対するものです。",
  "risk/unfit":
    "試行の{$share :chance of=harm}で、時間帯に収まらないステップがあります：{$windows :list}、{$steps :list}",
  "risk/of": "{$name} {$share :chance of=harm}",
  "risk/done-late": "試行の{$share :chance of=harm}で、{$step}の完了が{$by :pet}より遅れます",
  "risk/started-late":
    "試行の{$share :chance of=harm}で、{$step}の開始が{$after}の後{$within :margin}を超えます",
};
