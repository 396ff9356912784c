import type { textsWords as english } from "../../english/screens/texts.ts";
import type { Translated } from "../../translated.ts";

/** In which language the texts of a procedure are shown, and how each stands in it. */
export const textsWords: Translated<typeof english> = {
  "texts/language": "Texte der Prozedur",
  "texts/as-written": "Wie geschrieben",
  "texts/as-written-in": "Wie geschrieben ({$language})",
  "texts/missing": "wie geschrieben",
  "texts/older": "älterer Text",
  "texts/marked": "{$text} ({$mark})",
  "texts/older-count":
    ".input {$count :integer} .match $count one {{Ein Text ist älter als der des Verfassers und so gekennzeichnet.}} * {{{$count} Texte sind älter als die des Verfassers und so gekennzeichnet.}}",
};
