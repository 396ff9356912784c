import type { textPaneWords as english } from "../../english/screens/text-pane.ts";
import type { Translated } from "../../translated.ts";

/** The file of a procedure as text. */
export const textPaneWords: Translated<typeof english> = {
  "text-pane/title": "الملف نصًا",
  "text-pane/name": "الإجراء بصيغة JSON",
  "text-pane/in-step": "النص والإجراء متطابقان.",
  "text-pane/unread": "ما كتبته لا تمكن قراءته بعد. يبقى الإجراء كما كان، ويبقى نصك هنا.",
  "text-pane/keys":
    "Ctrl+Space يكمل، وF8 ينقل إلى المأخذ التالي، وCtrl+Shift+M يعرض كل المآخذ، وTab يغادر النص.",
};
