import type { textPaneWords as english } from "../../english/screens/text-pane.ts";
import type { Translated } from "../../translated.ts";

/** The file of a procedure as text. */
export const textPaneWords: Translated<typeof english> = {
  "text-pane/title": "Le fichier en texte",
  "text-pane/name": "La procédure en JSON",
  "text-pane/in-step": "Le texte et la procédure concordent.",
  "text-pane/unread":
    "Ce que vous avez tapé ne peut pas encore être lu. La procédure reste comme elle était, et votre texte reste ici.",
  "text-pane/keys":
    "Ctrl+Espace complète, F8 va au constat suivant, Ctrl+Maj+M les liste tous, et Tab quitte le texte.",
};
