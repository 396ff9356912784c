import type { helpOfHandoverWords as english } from "../../english/screens/help-handover.ts";
import type { Translated } from "../../translated.ts";

/** The help of the handover. */
export const helpOfHandoverWords: Translated<typeof english> = {
  "guide/handover": "Aide : la relève",
  "guide/handover-what":
    "Une page qui dit où en est la sortie, pour qui prend la relève : alertes, limites, équipage, ce qui est à compléter, ce qui a été autrement que planifié, consommables, états et objets.",
  "guide/handover-moment":
    "Elle vaut pour le moment indiqué en tête, et pour le journal de cet appareil. « La refaire » la met à jour.",
  "guide/handover-paper":
    "« La procédure en l’état » est la procédure papier où ce qui est fait est coché et ce qui est connu rempli, pour continuer sur papier.",
  "guide/handover-figures":
    "Un seuil rouge et une heure de demi-tour sont des prévisions, d’après les derniers relevés ou la consommation planifiée. Un consommable jamais relevé suit le plan.",
  "guide/handover-late":
    "Ce que d’autres appareils ont saisi et pas encore envoyé n’y figure pas. L’en-tête nomme la dernière entrée prise en compte : demandez ce qui manque.",
  "guide/handover-unseen": "Une alerte que personne n’a vue est indiquée comme telle. Lisez-la à voix haute.",
};
