import type { workbookWords as english } from "../../english/screens/workbook.ts";
import type { Translated } from "../../translated.ts";

/** A plan as a table and as a workbook of a spreadsheet. */
export const workbookWords: Translated<typeof english> = {
  "workbook/grid": "表",
  "workbook/list": "一覧",
  "workbook/pet": "PET",
  "workbook/utc": "UTC",
  "workbook/windows": "開いている時間帯",
  "workbook/of-procedure": "手順書 {$procedure}、計画",
  "workbook/of-revision": "手順書 {$procedure}、改訂 {$revision}、計画",
  "workbook/no-start": "PET 0の日時の指定はありません。",
  "workbook/start": "PET 0 {$at :utc form=second} UTC",
  "workbook/caution":
    "計画は助言であり、判断は飛行規則、現地の規則、運用責任者によります。この表での変更は、手順書に反映されません。",
  "workbook/step-line": "{$start :clock}・{$number} {$action}（{$length :length}）",
  "workbook/joint-line": "{$start :clock}・{$number} {$action}（{$length :length}、{$crew :list}と共同）",
  "workbook/waits": "{$crew} {$seconds :number} s",
  "workbook/waits-for": "{$crew} {$seconds :number} s：{$on :message}",
  "workbook/critical": "クリティカル",
  "workbook/column-number": "番号",
  "workbook/column-task": "タスク",
  "workbook/column-who": "担当",
  "workbook/column-do": "作業",
  "workbook/column-start": "開始（PET）",
  "workbook/column-finish": "終了（PET）",
  "workbook/column-start-utc": "開始（UTC）",
  "workbook/column-finish-utc": "終了（UTC）",
  "workbook/column-low": "最短",
  "workbook/column-likely": "見込み",
  "workbook/column-high": "最長",
  "workbook/column-where": "場所",
  "workbook/column-after": "先行条件",
  "workbook/column-within": "時間帯",
  "workbook/column-slack": "フロート",
  "workbook/column-waits": "開始前の待ち",
};
