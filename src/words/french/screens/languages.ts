import type { languagesWords as english } from "../../english/screens/languages.ts";
import type { Translated } from "../../translated.ts";

/** The texts of a procedure in other languages, as they are written. */
export const languagesWords: Translated<typeof english> = {
  "languages/tag": "Étiquette de langue, comme fr ou pt-BR",
  "languages/add": "Ajouter la langue",
  "languages/show": "Textes affichés",
  "languages/all": "Tous",
  "languages/open": "Manquants ou plus anciens",
  "languages/missing": "manquant",
  "languages/none-open": "Aucun texte ne manque, et aucun n’est plus ancien que celui de l’auteur.",
  "languages/was": "Traduit de : {$text}",
  "languages/holds": "Il reste valable",
  "languages/more": "En afficher {$count :integer} de plus",
};
