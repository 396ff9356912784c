import type { textsWords as english } from "../../english/screens/texts.ts";
import type { Translated } from "../../translated.ts";

/** In which language the texts of a procedure are shown, and how each stands in it. */
export const textsWords: Translated<typeof english> = {
  "texts/language": "Textes de la procédure",
  "texts/as-written": "Texte d’origine",
  "texts/as-written-in": "Texte d’origine ({$language})",
  "texts/missing": "texte d’origine",
  "texts/older": "texte plus ancien",
  "texts/marked": "{$text} ({$mark})",
  "texts/older-count":
    ".input {$count :integer} .match $count one {{{$count} texte est plus ancien que celui de l’auteur ; il est signalé.}} many {{{$count} de textes sont plus anciens que ceux de l’auteur ; ils sont signalés.}} * {{{$count} textes sont plus anciens que ceux de l’auteur ; ils sont signalés.}}",
};
