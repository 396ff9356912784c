import type { helpOfHandoverWords as english } from "../../english/screens/help-handover.ts";
import type { Translated } from "../../translated.ts";

/** The help of the handover. */
export const helpOfHandoverWords: Translated<typeof english> = {
  "guide/handover": "ヘルプ：引き継ぎ",
  "guide/handover-what":
    "引き継ぐ人のために、船外活動の現状を1ページで示します。アラート、制限、クルー、未了事項、計画と異なった点、消耗品、状態、物品です。",
  "guide/handover-moment": "内容は、見出しの時点とこの端末のログによります。「作り直す」で最新になります。",
  "guide/handover-paper":
    "「現時点の手順書」は、完了したものにチェックを入れ、分かっているものを記入した紙の手順書です。紙で続けるときに使います。",
  "guide/handover-figures":
    "レッドラインと引き返し時刻は、直近の読み値または計画の消費率による予測です。読み値のない消耗品は計画によります。",
  "guide/handover-late":
    "ほかの端末で入力され、まだ送られていないものは含まれません。見出しに、含まれる最後のエントリーが示されます。足りないものは尋ねてください。",
  "guide/handover-unseen": "誰も確認していないアラートは、そのとおり示されます。読み上げてください。",
};
