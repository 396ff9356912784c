import type { helpOfWriteWords as english } from "../../english/screens/help-write.ts";
import type { Translated } from "../../translated.ts";

/** The help of the screen on which a procedure is written. */
export const helpOfWriteWords: Translated<typeof english> = {
  "guide/write": "ヘルプ：手順書の作成",
  "guide/write-table":
    "表には、タスクとステップが記載順に並びます。矢印キーでセルを移り、Enterで編集し、Escで元に戻します。Alt+上下で行の移動、Shift+上下で選択の拡張、Insertで追加、Deleteで外します。ボタンでも同じ操作ができます。",
  "guide/write-beside":
    "表の横に、選んだ行の全項目が表示されます。入力は、項目を離れるかEnterを押すと反映されます。",
  "guide/write-link":
    "リンク：ステップを選び、「リンク」を押し、空ける時間を入力して、先に来るステップを表かタイムラインでタップします。キーでは、そこへ移動してEnterを押すか、横の欄で選びます。Escでやめます。",
  "guide/write-joint":
    "共同ステップ：ステップを選び、「共同ステップ」を押し、その行のひもをタップして担当に加えたり外したりします。横の欄または「担当」でコールサインを押しても同じです。",
  "guide/write-drag":
    "行の右の持ち手で、その行と、一緒に選択したものを動かします。移る先が線で示されます。Escを押すか、表の外で離すと、すべて元のままです。",
  "guide/write-timeline":
    "タイムラインは、作成中の手順書の計画を示します。バーをタップするとステップが選択され、リンクの途中では、それが先に来るステップになります。",
  "guide/write-map":
    "「一覧」の場所には地図があります。場所を動かし、2つを経路で結び、新しい場所を入れられます。経路の長さは位置から測り、時間は自分で入力します。",
  "guide/write-offers":
    "「その時点で所持も近くにもなし」と「現在地からの経路なし」は、ステップの開始時点の計画から導かれます。それでも選べますが、指摘になります。",
  "guide/write-undo":
    "編集は1つずつまとめて元に戻せます。500回までさかのぼれ、ページを再読み込みした後も有効です。",
  "guide/write-figures":
    "終了、余裕、制限時間内の確率は、編集のたびに更新されます。更新されるまでは、変更前の値であることが示されます。",
  "guide/write-kept":
    "入力したものはすぐこの端末に保存されます。改訂版は、保存した人と理由とともに以前のものと並べて置かれ、棚から進行できます。",
  "guide/write-two":
    "同じ原稿が2つのページで開いている場合、後から書いた方に知らされます。誰かが決めるまで、上書きされるものはありません。",
  "guide/write-lost":
    "「保存されていません」は、端末の保存領域を使えないことを示します。ページを離れる前にファイルを保存してください。",
};
