import type { helpOfWriteWords as english } from "../../english/screens/help-write.ts";
import type { Translated } from "../../translated.ts";

/** The help of the screen on which a procedure is written. */
export const helpOfWriteWords: Translated<typeof english> = {
  "guide/write": "Aide : rédiger une procédure",
  "guide/write-table":
    "Le tableau contient tâches et étapes dans l’ordre de lecture. Les flèches vont de cellule en cellule, Entrée modifie, Échap laisse comme avant. Inser commence une étape, Maj avec Inser une tâche : Entrée passe à sa durée puis à l’étape suivante, Tab passe par qui, durée et ce qu’elle suit, comme 1.3 + 5. Alt avec haut ou bas déplace la ligne, Maj avec haut ou bas étend la sélection, Suppr retire. Les boutons font de même.",
  "guide/write-beside":
    "À côté du tableau figure tout ce qui concerne la ligne choisie. Un champ compte quand vous le quittez ou pressez Entrée.",
  "guide/write-link":
    "Lier : choisissez une étape, pressez Lier, tapez le temps qui doit s’écouler, et touchez l’étape qui vient avant, dans le tableau ou sur la chronologie. Au clavier : allez-y et pressez Entrée, ou choisissez-la à côté. Échap abandonne.",
  "guide/write-joint":
    "Étape commune : choisissez une étape, pressez Étape commune, et touchez sur sa ligne les brins, qui disent alors qui y prend part ou non. Presser les indicatifs à côté, ou sous « Qui », fait de même.",
  "guide/write-drag":
    "La poignée à droite d’une ligne la déplace, avec ce qui est sélectionné avec elle : un trait montre où elle irait. Échap, ou lâcher hors du tableau, laisse tout comme avant.",
  "guide/write-timeline":
    "Chronologie montre le plan de ce qui est rédigé. Un appui sur une barre sélectionne son étape ; pendant qu’une étape est liée, c’est celle qui vient avant.",
  "guide/write-map":
    "Sous Listes, les lieux ont une carte : déplacez-les, joignez-en deux par un chemin ou ajoutez-en un. La longueur d’un chemin est mesurée d’après les positions ; sa durée, c’est vous qui l’indiquez.",
  "guide/write-offers":
    "« Alors ni en main ni à portée » et « aucun chemin depuis là où ils sont » découlent du plan au moment où l’étape commence. Ces choix restent possibles, et deviennent alors des constats.",
  "guide/write-undo":
    "Chaque modification s’annule en entier, jusqu’à 500, même après un rechargement de la page.",
  "guide/write-figures":
    "La fin, la marge et la probabilité d’être dans la limite suivent chaque modification. Jusque-là, la ligne dit que ces chiffres sont d’avant.",
  "guide/write-kept":
    "Ce que vous rédigez est aussitôt sur cet appareil. Une révision est enregistrée avec qui et pourquoi, à côté des précédentes, et peut être suivie depuis l’étagère.",
  "guide/write-two":
    "Quand le même manuscrit est ouvert sur deux pages, celle qui écrit en second en est avertie ; rien n’est écrasé tant que personne n’a décidé.",
  "guide/write-lost":
    "« Non conservé » signifie que le stockage de l’appareil est inutilisable : enregistrez le fichier avant de quitter la page.",
  "guide/write-languages":
    "« Langues », parmi les listes, met chaque texte à côté de son texte dans une autre langue. Entrée prend ce qui est saisi et passe à la ligne suivante ; « Il reste valable » dit d’un texte plus ancien qu’il n’a pas à changer.",
};
