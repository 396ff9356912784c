import type { walksComparedWords as english } from "../../english/screens/walks-compared.ts";
import type { Translated } from "../../translated.ts";

/** What is said of many walks side by side. */
export const walksComparedWords: Translated<typeof english> = {
  "walks/title": "船外活動の比較",
  "walks/what": "この手順書のすべての船外活動を1つの時間軸に",
  "walks/all": "船外活動 {$count :integer}件",
  "walks/all-how":
    "線はクルーを表し、太い部分はステップの実施、切れ目は待ちと手空きです。ひし形は計画と異なって実施されたステップを示します。線をタップすると、その船外活動のレビューがそのステップで開きます。",
  "walks/of-live": "{$at :utc}の本番",
  "walks/of-rehearsal": "{$at :utc}のリハーサル",
  "walks/end-complete": "完了",
  "walks/end-terminated": "打ち切り",
  "walks/end-aborted": "緊急中止",
  "walks/end-open": "未クローズ",
  "walks/finish": "{$ended}、最後のステップ {$finish :finish}",
  "walks/finish-later": "{$ended}、最後のステップ {$finish :finish}、計画より{$by :length}遅れ",
  "walks/finish-earlier": "{$ended}、最後のステップ {$finish :finish}、計画より{$by :advance}先行",
  "walks/order":
    ".input {$broken :integer} .input {$all :integer} .match $broken 0 {{順序は全{$all}か所で計画どおり}} * {{順序は{$all}か所中 {$broken}か所で計画と相違}}",
  "walks/order-none": "順序の対象なし",
  "walks/deviations": ".input {$count :integer} .match $count 0 {{逸脱なし}} * {{逸脱 {$count}件}}",
  "walks/waits": "最も長い待ち：{$waits :clauses}",
  "walks/waited": "{$who}：{$waited :message}",
  "walks/open": "レビュー",
  "walks/open-of": "{$at :utc}の船外活動のレビュー",
  "walks/in-second": "第2群",
  "walks/show-rest": "さらに船外活動 {$count :integer}件を表示",
  "walks/steps": "ステップ別",
  "walks/no-steps": "所要時間の分かるステップが、これらの船外活動にありません。",
  "walks/too-few": "船外活動 {$count :integer}件：5件未満では個々の値だけを示します",
  "walks/quantiles":
    "半数が{$middle :length form=second}以内、10件中8件が{$from :length form=second}〜{$to :length form=second}、通常の開きは{$factor :number maximumFractionDigits=2}倍",
  "walks/groups": "2群の比較",
  "walks/groups-choose": "上で第2群の船外活動を選んでください。ほかが第1群になります。",
  "walks/groups-of": "第1群 {$first :integer}件、第2群 {$second :integer}件。",
  "walks/groups-untested": "両群に2件ずつの値があるステップがないため、検定していません。",
  "walks/groups-none": "検定した{$count :integer}件のステップで、差は認められません。",
  "walks/groups-shown": "検定した{$all :integer}件のステップのうち、{$count :integer}件で差が認められます。",
  "walks/group-ratio":
    "第2群は{$ratio :number maximumFractionDigits=2}倍の時間（{$first :integer}件と{$second :integer}件）",
  "walks/groups-how":
    "差が認められなくても、差がないとは限りません。認められた差も、その原因や、誰かが速いことを示すものではありません。",
  "walks/forecasts": "予測は当たったか",
  "walks/forecasts-working": "ログから予測を再計算しています…",
  "walks/forecasts-none":
    "まだ予測を評価できません。「完了」としてクローズされ、2つ以上のタスクを持つ船外活動が必要です。",
  "walks/bands-held":
    "タスク終了時の80 %の範囲 {$count :integer}件のうち、実際の終了を含んだのは{$held :integer}件です（偶然を考慮して{$from :integer}〜{$to :integer} %）。船外活動 {$walks :integer}件。",
  "walks/scores":
    "外れの平均スコアは{$score :length form=second}、計画者の値だけの計画では{$planned :length form=second}です。小さいほど良い値です。",
  "walks/verdict-too-few": "評価には足りません。予測40件と船外活動5件が必要です。",
  "walks/verdict-hold": "範囲は、示すとおりの頻度でおおむね当たっています。",
  "walks/verdict-too-narrow": "範囲が狭すぎます。示すより多く、終了が範囲の外にあります。",
  "walks/verdict-too-wide": "範囲が必要以上に広くなっています。",
  "walks/forecasts-left-out":
    "船外活動 {$count :integer}件は、「完了」としてクローズされていないため除外しました。",
  "walks/forecasts-shorter":
    "予測 {$count :integer}件は、見込んでいなかった余裕時タスクが実施されたため除外しました。",
  "walks/forecasts-how":
    "同じ船外活動の予測は当たり外れをともにするため、少数の船外活動の多数の予測が示すものは、見かけより少なくなります。",
};
