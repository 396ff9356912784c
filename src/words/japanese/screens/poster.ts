import type { posterWords as english } from "../../english/screens/poster.ts";
import type { Translated } from "../../translated.ts";

/** The timeline as a large sheet, and the ways in which a plan leaves. */
export const posterWords: Translated<typeof english> = {
  "poster/paper": "用紙",
  "poster/iso": "A3",
  "poster/ansi": "タブロイド（11 × 17 in）",
  "poster/no-start": "開始の指定なし（UTCなし）",
  "poster/caution":
    "見込み時間による計画です。計画は助言であり、判断は飛行規則、現地の規則、運用責任者によります。",
  "poster/step": "{$start :pet} {$who}：",
  "poster/leaves": "計画の書き出し",
  "poster/leave-csv": "表（CSV）",
  "poster/leave-workbook": "ワークブック（.xlsx）",
  "poster/leave-poster": "ポスター",
  "poster/not-written": "ワークブックを作成できませんでした。アプリの作成用の部分を読み込めませんでした。",
  "timeline/strip": "PET {$from :hour-minute}から{$to :hour-minute}までのタイムライン",
};
