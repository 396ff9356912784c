import type { helpOfCompareWords as english } from "../../english/screens/help-compare.ts";
import type { Translated } from "../../translated.ts";

/** The help of comparing and merging. */
export const helpOfCompareWords: Translated<typeof english> = {
  "guide/compare": "Aide : comparer",
  "guide/compare-changes":
    "« Ce qui a changé » nomme chaque changement par sa tâche. Une étape se reconnaît à son identifiant : si elle en a reçu un autre, elle compte comme retirée et ajoutée.",
  "guide/compare-flag":
    "Dans les chronologies, un drapeau au début d’une barre marque une étape changée ; les deux ont la même échelle.",
  "guide/compare-choose":
    "Les deux révisions se choisissent en haut. Un fichier est comparé sans être mis sur l’étagère, et il est oublié avec sa page.",
  "guide/compare-print":
    "La page imprimée est la révision la plus récente, avec un trait en marge à côté de chaque étape changée.",
  "guide/compare-merge":
    "Pour fusionner, choisissez la révision dont toutes deux sont issues. Ce qu’une seule a changé est repris. Là où les deux ont changé la même chose, rien n’est repris tant que vous n’avez pas choisi.",
  "guide/compare-effect":
    "Les deux sont planifiées comme attendu, sans tâches facultatives, avec le même début et la même lumière. Un constat est le même quand il dit la même chose.",
  "guide/compare-not-there":
    "Une révision qui n’est pas sur cet appareil ne peut pas être comparée : importez son fichier. Une fusion n’est sûre qu’avec la révision dont toutes deux sont vraiment issues ; une autre ramène ce qui a été retiré.",
};
