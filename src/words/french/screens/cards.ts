import type { cardsWords as english } from "../../english/screens/cards.ts";
import type { Translated } from "../../translated.ts";

/** The cards that are worn on the wrist. */
export const cardsWords: Translated<typeof english> = {
  "cards/wrist-cards": "Cartes de poignet",
  "cards/title": "Cartes de poignet : {$title}",
  "cards/what":
    "Pour chaque membre d’équipage à l’extérieur : ses propres étapes, les étapes communes, les alertes et les procédures de secours, avec les numéros des écrans. Imprimez en taille réelle (100 %), et coupez aux repères. Les heures planifiées sont des heures probables, non des limites.",
  "cards/size": "Taille",
  "cards/size-large": "90 × 122 mm, 4 par feuille",
  "cards/size-medium": "58 × 122 mm, 6 par feuille",
  "cards/size-small": "58 × 79 mm, 9 par feuille",
  "cards/size-own": "taille propre",
  "cards/width": "Largeur, mm",
  "cards/height": "Hauteur, mm",
  "cards/nobody": "Personne ne travaille à l’extérieur dans cette procédure ; il n’y a donc pas de cartes.",
  "cards/no-plan": "Il n’y a pas de plan : les cartes n’ont pas d’heures.",
  "cards/foot": "{$id}, {$revision}, imprimé le {$at :utc form=minute} UTC",
  "cards/task": "{$number :integer} {$title}",
  "cards/get-ahead": "{$number :integer} {$title} (facultative : seulement si le temps le permet)",
  "cards/contingency": "{$number} {$title}",
  "cards/contingency-when": "{$number} {$title} (quand : {$when})",
  "cards/planned": "plan {$at :hour-minute}",
  "cards/with": "avec {$crew}",
  "cards/sheet": "{$crew}, feuille {$sheet :integer} sur {$of :integer}",
  "cards/card": "{$crew}, carte {$number :integer} sur {$of :integer}",
  "cards/number": "{$number :integer} sur {$of :integer}",
  "cards/continued": "{$step} suite de la carte {$card :integer}",
  "cards/goes-on": "{$step} continue : carte {$card :integer}",
};
