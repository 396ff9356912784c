import type { figureGapWords as english } from "../../english/screens/figure-gaps.ts";
import type { Translated } from "../../translated.ts";

/** The figures of a walk that are not known: what is missing, and why it can or cannot be set while the walk runs. */
export const figureGapWords: Translated<typeof english> = {
  "gap/title": "不明な値",
  "gap/not-known": "不明",
  "gap/set-it": "不明な理由と対応",
  "gap/turn-back": "引き返し",
  "gap/no-limit":
    "手順書に制限時間がないため、余裕はありません。制限時間は手順書のもので、船外活動の途中では設定できません。",
  "gap/no-forecast":
    "残りを予測できません。残りの作業がどの時間帯にも収まらなくなったか、ステップが互いを待っています。理由を付けてステップをスキップするか、船外活動をクローズできます。",
  "gap/no-way-back":
    "退避場所への帰路が不明か、収まらないため、引き返し時刻を計算できません。場所と経路は手順書のもので、船外活動の途中では設定できません。",
  "gap/no-end-of-supplies":
    "引き返し時刻を計算できません。制限時間がなく、計画の消費率では尽きる消耗品もありません。5分以上の間隔を空けた2回の読み値があれば、消費率を求められます。",
  "gap/nothing-runs-out":
    "引き返し時刻を計算できません。手順書に制限時間も消耗品もなく、どちらも船外活動の途中では設定できません。",
  "gap/never-read":
    "読み値がないため、計画の消費率を使っています：{$supplies :list}。読み値を入力すると実際の残量が分かります。",
  "gap/supply-of": "{$crew} {$supply}",
  "gap/no-light":
    "{$windows :list}の時刻が不明です。船外活動が軌道も地点もなしに作成されたためです。責任者は、下で全端末に対して、または船外活動の作成前にタイムラインで選べます。",
  "gap/windows-from-start": "{$windows :list}の時刻は、時計の開始後に分かります。",
  "gap/not-started": "時計は開始されていません。それまでの時刻はすべて、PET 0から数えた計画の時刻です。",
  "gap/enter-reading": "読み値を入力",
  "gap/marker-enters": "このタブレットは閲覧用です。読み値は入力する人が入力します。",
};
