import type { decisionWords as english } from "../../english/screens/decisions.ts";
import type { Translated } from "../../translated.ts";

/** A decision on the follow screen: what each outcome would lead to, and what holds while it is asked again. */
export const decisionWords: Translated<typeof english> = {
  "decision/asked-again":
    "未完了に戻っています。改めて判断されるまで「{$outcome}」が有効で、その分岐は待ちになります。",
  "decision/branch-asked-again":
    "ステップ {$number}は再判断になります。ここは分岐「{$outcome}」で、それまで待ちになります。",
  "decision/leads-to": "各結果から先の見通し（現在からの見込み時間）",
  "decision/expected": "想定",
  "decision/in-force": "有効",
  "decision/no-steps": "固有のステップはありません。",
  "decision/steps": "固有のステップ {$count :integer}件。",
  "decision/steps-at": "固有のステップ {$count :integer}件：{$places :list}。",
  "decision/joint": "共同ステップ {$step}は{$time :length}後に開始できます。",
  "forecast/finish": "終了 {$finish :finish}。",
  "forecast/finish-margin": "終了 {$finish :finish}、余裕 {$margin :margin}。",
  "forecast/finish-over": "終了 {$finish :finish}、{$margin :length}超過。",
  "forecast/none-with-it": "この場合、残りを予測できません。",
  "decision/before-start": "時刻は、時計の開始後に示します。",
};
