import type { helpOfRemarksWords as english } from "../../english/screens/help-remarks.ts";
import type { Translated } from "../../translated.ts";

/** What the help of reading says of remarks. */
export const helpOfRemarksWords: Translated<typeof english> = {
  "guide/remarks":
    "« Remarques » recueille commentaires et accords, sur une étape ou sur le tout. Les commentaires ouverts figurent parmi les constats jusqu’à ce que quelqu’un les règle, y compris dans les révisions suivantes.",
  "guide/remarks-agree":
    "Un accord vaut pour un seul texte, avec tous ses octets, et n’approuve rien. Enregistrez les remarques dans un fichier pour les donner à d’autres : les fichiers de plusieurs lecteurs se réunissent dans n’importe quel ordre.",
};
