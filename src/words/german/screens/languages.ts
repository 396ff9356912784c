import type { languagesWords as english } from "../../english/screens/languages.ts";
import type { Translated } from "../../translated.ts";

/** The texts of a procedure in other languages, as they are written. */
export const languagesWords: Translated<typeof english> = {
  "languages/tag": "Sprachkürzel, wie fr oder pt-BR",
  "languages/add": "Sprache hinzufügen",
  "languages/show": "Gezeigte Texte",
  "languages/all": "Alle",
  "languages/open": "Fehlende oder ältere",
  "languages/missing": "fehlt",
  "languages/none-open": "Kein Text fehlt, und keiner ist älter als der des Verfassers.",
  "languages/was": "Übersetzt aus: {$text}",
  "languages/holds": "Er gilt noch",
  "languages/more": "{$count :integer} weitere zeigen",
};
