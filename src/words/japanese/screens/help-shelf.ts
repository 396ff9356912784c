import type { helpOfShelfWords as english } from "../../english/screens/help-shelf.ts";
import type { Translated } from "../../translated.ts";

/** The help of the shelf. */
export const helpOfShelfWords: Translated<typeof english> = {
  "guide/shelf": "ヘルプ：棚",
  "guide/shelf-walk":
    "船外活動は、手順書の1回の実施またはリハーサルです。進行中のものが先頭にあり、「続ける」で元の所から開きます。",
  "guide/shelf-follow":
    "「進行」は、手順書の船外活動を作成します。時計は、誰かが「時計を開始」をタップするまで動きません。「リハーサル」では、プログラムがクルー役を演じます。",
  "guide/shelf-read": "「閲覧」は、準備された手順書を、指摘、計画、印刷用ページとともに示します。",
  "guide/shelf-join":
    "「船外活動に参加」では、責任者が示すコードを使って、ほかの人が責任者の船外活動に参加します。",
  "guide/shelf-bring":
    "ファイルは、選択、棚へのドロップ、テキストの貼り付けで取り込めます。ログやバックアップを2回取り込んでも問題はなく、既知のエントリーはそのままです。",
  "guide/shelf-facts":
    "手順書の横のステップ数、クルー、計画の終了は、この端末でファイルだけから、軌道も実際の経過もなしに計算したものです。",
  "guide/shelf-findings":
    "エラー、要確認、助言は検査の結果です。「指摘なし」は、順序、場所、物品、文言に指摘がないことを示します。判断の良否は検査しません。",
  "guide/shelf-room": "下の行は、このブラウザーが入力をどの程度保持するか、空きがどれだけあるかを示します。",
  "guide/shelf-unreadable":
    "読み取れない手順書は進行できません。「閲覧」に、誤りがそれぞれ行と対処とともに示されます。",
  "guide/shelf-lost":
    "ここにない船外活動は、別の端末にある可能性があります。書き出したログを取り込むか、ハブから参加してください。自動で送られるものはありません。",
  "guide/shelf-remove":
    "「書き出して端末から削除」は、まずログを保存し、保存が中止されたときは何も削除しません。端末を替える前に、すべてバックアップしてください。",
};
