import type { textPaneWords as english } from "../../english/screens/text-pane.ts";
import type { Translated } from "../../translated.ts";

/** The file of a procedure as text. */
export const textPaneWords: Translated<typeof english> = {
  "text-pane/title": "Die Datei als Text",
  "text-pane/name": "Die Prozedur als JSON",
  "text-pane/in-step": "Text und Prozedur stimmen überein.",
  "text-pane/unread":
    "Was Sie getippt haben, ist noch nicht lesbar. Die Prozedur bleibt, wie sie war, und Ihr Text bleibt hier.",
  "text-pane/keys":
    "Strg+Leertaste vervollständigt, F8 geht zum nächsten Befund, Strg+Umschalt+M führt alle auf, und Tab verlässt den Text.",
};
