import type { helpOfTimelineWords as english } from "../../english/screens/help-timeline.ts";
import type { Translated } from "../../translated.ts";

/** The help of the timeline, of a plan and of a walk. */
export const helpOfTimelineWords: Translated<typeof english> = {
  "guide/timeline": "Aide : la chronologie",
  "guide/timeline-lanes":
    "Chaque rangée est un membre d’équipage, et le temps va vers la droite en PET. Le fond montre le jour, la nuit et les fenêtres quand ils sont connus.",
  "guide/timeline-shapes":
    "Le sens de chaque forme est donné sous l’image. « En tableau » donne la même chose en chiffres.",
  "guide/timeline-waits":
    "Une partie hachurée est une attente : touchez l’étape qui la suit pour lire qui ou ce qui est attendu.",
  "guide/timeline-now":
    "Pendant une sortie, un trait marque maintenant : ce qui est avant a été fait, ce qui est après est la prévision.",
  "guide/timeline-forecast":
    "La prévision garde ce qui a été fait et planifie le reste d’après les durées probables, à partir de maintenant. Une étape en cours finit à son début plus sa durée probable, ou maintenant, selon le plus tardif.",
  "guide/timeline-misses":
    "« Ce que des tirages manquent » nomme les fenêtres que des tirages manquent, et les heures ou délais auxquels ils ne font pas une étape, chacun avec sa part des tirages.",
  "guide/timeline-starts":
    "Le graphique des débuts montre la fin pour chaque début d’un jour et, en ligne pointillée, la probabilité : en dessous figurent les chiffres du début choisi.",
  "guide/timeline-light":
    "Le jour, la nuit et le contact viennent du fichier d’orbite, du site ou de la liste d’heures choisis. Les jeux d’éléments d’une orbite se dégradent avec l’âge : regardez leur date.",
  "guide/timeline-what-if":
    "Un essai ne change rien tant qu’il n’est pas enregistré ; enregistré, c’est une autre révision sur l’étagère. Le fichier d’origine reste tel quel.",
  "guide/timeline-split":
    "« Meilleure répartition » cherche qui devrait faire quoi, et dans quel ordre, pour la fin la plus proche, là où la procédure laisse un choix. Le plan reste tel quel jusqu’à ce que vous enregistriez la proposition comme révision. « Le démontrer » en cherche la démonstration, par une partie de l’application qui est chargée à ce moment et qui reste.",
  "guide/timeline-leaves":
    "« Emporter le plan » donne le plan en tableau, en classeur avec une grille de l’équipage par heure et une liste, et en affiche A3 ou tabloïd. Ce qui y est changé ne revient pas dans la procédure.",
  "guide/timeline-fragments":
    "« Fragments » insère quelques étapes ou tâches réutilisées, leurs champs remplis, et enregistre le résultat comme révision. Les étapes insérées s’en souviennent, si bien qu’une révision ultérieure du fragment peut être proposée.",
  "guide/timeline-none":
    "Sans chronologie, la procédure ne peut pas être planifiée : les raisons figurent à sa place. Sans jour ni nuit, choisissez un fichier d’orbite ou un site.",
};
