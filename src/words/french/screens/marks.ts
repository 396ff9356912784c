import type { marksWords as english } from "../../english/screens/marks.ts";
import type { Translated } from "../../translated.ts";

/** The page of all marks, and its help. */
export const marksWords: Translated<typeof english> = {
  "marks/title": "Tous les signes",
  "marks/what": "Chaque signe de chaque écran, et ce qu’il veut dire",
  "marks/braid": "À côté d’une liste d’étapes",
  "marks/step": "À une étape",
  "marks/alerts": "Alertes d’une sortie",
  "marks/amended":
    "Une étape touchée par une modification du plan dit comment, jusqu’à ce qu’elle ait été vue sur cet appareil.",
  "marks/notes": "Une feuille au coin plié compte les notes de l’étape.",
  "guide/marks-title": "Aide : les signes",
  "guide/marks-page":
    "Chaque signe est dessiné ici par ce qui le dessine sur son écran, avec son sens à côté.",
  "guide/marks-hue":
    "La teinte n’est jamais seule : ce qui diffère par la couleur diffère aussi par la forme, les tirets ou un mot.",
  "guide/marks-themes": "De nuit et en couleurs atténuées, les formes et les tirets restent les mêmes.",
  "guide/marks-sample":
    "Le site de travail est celui de la sortie d’entraînement. Là où il ne peut pas être lu, les phrases restent sans image.",
  "guide/marks-words":
    "Un signe qui n’est pas ici n’est pas de ce programme : cherchez-le dans ce que l’auteur de la procédure a dessiné ou écrit.",
};
