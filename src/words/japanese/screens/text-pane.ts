import type { textPaneWords as english } from "../../english/screens/text-pane.ts";
import type { Translated } from "../../translated.ts";

/** The file of a procedure as text. */
export const textPaneWords: Translated<typeof english> = {
  "text-pane/title": "テキストとしてのファイル",
  "text-pane/name": "JSONの手順書",
  "text-pane/in-step": "テキストと手順書は一致しています。",
  "text-pane/unread": "入力した内容はまだ読み取れません。手順書は元のままで、テキストはここに残ります。",
  "text-pane/keys":
    "Ctrl+Spaceで補完、F8で次の指摘へ移動、Ctrl+Shift+Mで指摘の一覧、Tabでテキストから出ます。",
};
