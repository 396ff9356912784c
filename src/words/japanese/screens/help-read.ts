import type { helpOfReadWords as english } from "../../english/screens/help-read.ts";
import type { Translated } from "../../translated.ts";

/** The help of the procedure as prepared. */
export const helpOfReadWords: Translated<typeof english> = {
  "guide/read": "ヘルプ：手順書の閲覧",
  "guide/read-finding":
    "指摘は、該当するステップにレベルとともに示されます。エラーは船外活動の前に修正が必要なもの、要確認は見ておくべきもの、助言はそのままでもよいものです。別の指摘から生じたものは、その下に置かれます。",
  "guide/read-conditions":
    "「必要な状態」「時間帯」「開始の下限」「…の後」は、ステップの前に満たすべき条件です。「実施後の状態」は、ステップが変えるものです。",
  "guide/read-branch":
    "「実施条件」は、分岐のステップを示します。ここの計画では、各判断の結果をファイルの想定どおりとします。",
  "guide/read-outline":
    "このページはファイルだけを示します。開始時刻も軌道も、実際の経過も含みません。それらはタイムラインで選びます。",
  "guide/read-waits":
    "待ちには、待つ相手または対象が示されます。計画から導かれるもので、ファイルのステップではありません。",
  "guide/read-no-plan":
    "計画の時刻がない場合は、手順書が今のままでは計画できないか、ステップが判断によります。理由は指摘にあります。",
  "guide/read-mend":
    "「編集」で表が開き、指摘を修正できます。エディターでファイルを修正し、別の改訂版として取り込むこともできます。",
  "guide/texts":
    "手順書は複数の言語の文を持てます。「手順書の文」で言語を選びます（船外活動中は「その他」の中）。横のボタンで原文に切り替え、また戻せます。選んだ言語は手順書とその船外活動のすべての画面に適用されます。文に「原文のまま」とあればその言語の訳文がなく、「古い訳文」とあれば訳した後に原文が変わっています。",
};
