import type { fitWords as english } from "../../english/screens/fit.ts";
import type { Translated } from "../../translated.ts";

/** What still fits under the limit: the panel on the follow screen and on the timeline of a plan. */
export const fitWords: Translated<typeof english> = {
  "fit/title": "まだ収まるもの",
  "fit/tool": "遅れ？",
  "fit/in-time": "「間に合う」の基準",
  "fit/by-chance": "試行の9割が制限時間内",
  "fit/by-likely": "見込み時間で制限時間内（確率は問わない）",
  "fit/working": "収まるものを調べています …",
  "fit/failed": "ここでは、収まるものを計算できませんでした。パネルを閉じて、もう一度実行してください。",
  "fit/from": "PET {$now :clock}から、制限時間 {$limit :clock}。",
  "fit/from-no-limit": "PET {$now :clock}から。この手順書に制限時間がないため、すべて収まります。",
  "fit/proven":
    "最適と証明済み：収まる中で、これより価値の高いものはありません（{$tried :integer}組を調査）。",
  "fit/no-choice": "収まります。選べる余裕時タスクは残っていません。",
  "fit/best-found":
    "見つかった最良：価値 {$worth :number maximumFractionDigits=2}。収まる中で、価値が{$bound :number maximumFractionDigits=2}を超えるものはありません（{$tried :integer}組を調査）。",
  "fit/no-plan": "収まりません：現時点から必須の作業を計画できません。",
  "fit/never": "どの制限時間でも収まりません：必須の作業のステップが時間帯に収まらない試行が多すぎます。",
  "fit/short": "収まりません：必須の作業だけで{$time :length}不足しています。",
  "fit/without-any": "余裕時タスクなし",
  "fit/keep-to-plan": "計画を維持（余裕時タスクなし）",
  "fit/with": "{$tasks :list}（価値 {$worth :number maximumFractionDigits=2}）",
  "fit/fewest": "収まる組の中で、除外する余裕時タスクが最も少ないものです。",
  "fit/without": "除外：{$tasks :list}",
  "fit/in-time-share": "間に合う確率",
  "fit/amend": "これを入れた場合の計画を見る",
  "fit/share": "{$share :chance}（± {$error :number maximumFractionDigits=1}ポイント）",
  "fit/windows": "このタスクのステップに必要：{$windows :list}。",
  "fit/left": "終了時にあるべき状態でないもの",
  "fit/again": "現在から再計算",
  "fit/leave-out": "必須の作業を除外",
  "fit/leave-out-how":
    "ここでチェックしない限り、必須の作業は除外されません。チェックしたタスクの残りは計算に入りません。",
  "fit/how":
    "ここで変わるものはありません。終了は見込み時間によります。「間に合う確率」は、この計算独自の試行のうち制限時間内に終わる割合です。価値は作成者の値で、指定がなければ1です。",
};
