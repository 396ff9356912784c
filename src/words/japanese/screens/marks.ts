import type { marksWords as english } from "../../english/screens/marks.ts";
import type { Translated } from "../../translated.ts";

/** The page of all marks, and its help. */
export const marksWords: Translated<typeof english> = {
  "marks/title": "すべての記号",
  "marks/what": "各画面の記号とその意味",
  "marks/braid": "ステップの一覧の横",
  "marks/step": "ステップの欄",
  "marks/alerts": "船外活動のアラート",
  "marks/amended":
    "計画変更の対象となったステップには、この端末で確認されるまで、どう変わったかが表示されます。",
  "marks/notes": "角を折った紙の記号は、そのステップのメモの数を示します。",
  "guide/marks-title": "ヘルプ：記号",
  "guide/marks-page": "各記号は、その画面で描くものと同じ部品でここに描かれ、横に意味が書かれています。",
  "guide/marks-hue": "色だけで区別することはありません。色が違うものは、形、破線、または言葉も違います。",
  "guide/marks-themes": "夜間や減光の配色でも、形と破線は変わりません。",
  "guide/marks-sample":
    "作業エリアの図は練習の船外活動のものです。読み込めないときは、図なしで文だけが表示されます。",
  "guide/marks-words":
    "ここにない記号は、このプログラムのものではありません。手順書の作成者が描いたものや書いたものを見てください。",
};
