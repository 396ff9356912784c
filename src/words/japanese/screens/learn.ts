import type { learnWords as english } from "../../english/screens/learn.ts";
import type { Translated } from "../../translated.ts";

/** What is said of what walks tell of how long steps take. */
export const learnWords: Translated<typeof english> = {
  "learn/no-evidence": "実績データのある船外活動はありません。計画者の値のままです。",
  "learn/one-walk": "実績データは船外活動1件だけで、ほかの値を提案するには足りません。",
  "learn/hardly-moved": "見込み時間の変化が1割または30秒に満たないため、計画者の値のままです。",
  "learn/disagree":
    "計画と実績データが一致しません。船外活動ごとのばらつきが、計画をはるかに超えています。値を変える前に、1件ずつ確認してください。",
  "learn/offered": "船外活動 {$count :integer}件の実績データがあります。",
  "learn/offered-rehearsed": "リハーサル {$count :integer}件の実績データがあり、本番のものはありません。",
  "learn/title": "船外活動から学ぶ",
  "learn/what": "ステップの所要時間の実績と計画",
  "learn/working": "船外活動を読み込んでいます…",
  "learn/failed":
    "この端末の船外活動を読み出せませんでした。失われたものはありません。戻って、このページを開き直してください。",
  "learn/no-walks":
    "この端末に、この手順書の船外活動はまだありません。進行かリハーサルを行うか、棚でログを取り込んでください。",
  "learn/told-by": "この端末の本番 {$live :integer}件とリハーサル {$rehearsed :integer}件",
  "learn/in-one-go":
    "{$count :integer}件のステップは、ほかのステップとまとめて完了が入力されたため、実績データになりません。",
  "learn/renamed": "idの変わったステップ",
  "learn/renamed-how":
    "この改訂版でidが異なるステップは、どれに当たるかを指定しない限り、新たに始まります。候補は、担当、物品、移動先が同じステップです。",
  "learn/renamed-is-now": "「{$action}」（{$id}）に当たるもの",
  "learn/renamed-none": "どれでもない",
  "learn/renamed-step": "{$number} {$action}",
  "learn/renamed-said": "{$before}は現在の{$now}です。",
  "learn/renamed-take-back": "取り消す",
  "learn/renamed-take-back-of": "{$before}の対応付けを取り消す",
  "learn/unmatched":
    "{$count :integer}件の時間は、なくなったステップか、作業内容の変わったステップのものです：{$steps :list}。",
  "learn/which": "表示するステップ",
  "learn/shown-evidence": "実績データのあるステップ（{$count :integer}）",
  "learn/shown-offered": "提案のあるステップ（{$count :integer}）",
  "learn/shown-all": "すべてのステップ（{$count :integer}）",
  "learn/none-shown": "該当するものはありません。",
  "learn/steps": "ステップ",
  "learn/planned":
    "計画：見込み{$likely :length form=second}、{$low :length form=second}〜{$high :length form=second}",
  "learn/expected":
    "現在の予想：{$middle :length form=second}、10件中8件が{$from :length form=second}〜{$to :length form=second}",
  "learn/weight": "実績データの重み {$weight :number maximumFractionDigits=1}",
  "learn/weight-thin": "不足：実績データの重み {$weight :number maximumFractionDigits=1}",
  "learn/rehearsed-only": "リハーサルのみの値で、本番の速さは分かりません",
  "learn/take":
    "計画：見込み{$likely :length form=second}、{$low :length form=second}〜{$high :length form=second}",
  "learn/walks": "船外活動 {$count :integer}件",
  "learn/walk-took": "{$time :length form=second}、{$at :utc}の{$mode}",
  "learn/walk-broken-off": "{$time :length form=second}で中断、{$at :utc}の{$mode}",
  "learn/mode-live": "本番",
  "learn/mode-rehearsal": "リハーサル",
  "learn/weighs": "重み {$weight :number maximumFractionDigits=2}",
  "learn/start-said": "開始は入力値",
  "learn/start-inferred": "開始は推定",
  "learn/was-reopened": "未完了に戻した分も合算",
  "learn/was-held": "ホールドを除く",
  "learn/far-off": "ほかと大きく異なり、重みが小さい",
  "learn/legend-planned": "計画：10件中8件",
  "learn/legend-found": "計画と実績データ：10件中8件",
  "learn/legend-quantiles": "これらの船外活動の10件中8件",
  "learn/legend-live": "本番",
  "learn/legend-rehearsal": "リハーサル",
  "learn/legend-broken-off": "中断",
  "learn/legend-outlier": "ほかと大きく異なる",
  "learn/legend-scale": "計画の見込み時間。両側の線は半分と2倍の長さ",
  "learn/no-learning": "リハーサル {$walks :integer}件：習熟の効果は見られません。",
  "learn/learning-shorter":
    "リハーサル {$walks :integer}件で所要時間が短くなりました：回数が2倍になるごとに{$percent :integer} %。",
  "learn/learning-longer":
    "リハーサル {$walks :integer}件で所要時間が長くなりました：回数が2倍になるごとに{$percent :integer} %。",
  "learn/how":
    "保存するまで何も変わりません。提案を採用するかどうかは自由です。ステップに時間がかかった理由は、実績データからは分かりません。",
  "learn/save":
    ".input {$count :integer} .match $count 0 {{改訂 {$revision}として保存}} * {{時間 {$count}件を改訂 {$revision}として保存}}",
  "learn/summary": "船外活動 {$walks :list}による{$steps :list}の時間。",
  "learn/summary-behind": "{$summary} 船外活動 {$walks :list}による{$steps :list}の時間。",
};
