import type { writeWords as english } from "../../english/screens/write.ts";
import type { Translated } from "../../translated.ts";

/** Why something cannot be done to a procedure that is being written. */
export const writeWords: Translated<typeof english> = {
  "write/no-procedure": "La procédure n’aurait plus une forme lisible.",
  "write/no-row": "Choisissez d’abord une tâche ou une étape.",
  "write/nothing-chosen": "Choisissez d’abord une étape.",
  "write/last-task": "Une procédure a besoin d’au moins une tâche.",
  "write/tasks-or-steps": "Choisissez soit des tâches entières, soit des étapes isolées de la même partie.",
  "write/beside-itself": "Des lignes ne peuvent pas être déplacées à côté d’elles-mêmes.",
  "write/at-the-end": "Elle est déjà la dernière.",
  "write/at-the-beginning": "Elle est déjà la première.",
  "write/join-several": "Choisissez au moins deux étapes pour les réunir.",
  "write/join-neighbours": "Seules des étapes qui se suivent dans une même tâche peuvent être réunies.",
  "write/join-people": "Seules des étapes faites par les mêmes personnes peuvent être réunies.",
  "write/join-conditions": "Seules des étapes soumises aux mêmes conditions peuvent être réunies.",
  "write/join-places":
    "Seules des étapes au même lieu peuvent être réunies, et aucun déplacement sauf en dernier.",
  "write/join-one-only":
    "Plus d’une d’entre elles a une confirmation, une décision, un ancrage, un texte de briefing, une borne de temps ou d’autres personnes qui pourraient la faire ; ou une étape suivante exige un état. Retirez cela d’abord.",
  "write/join-records": "Deux de leurs mesures ont le même nom. Renommez d’abord l’une d’elles.",
  "write/no-rows-in-text": "Ce qui a été collé ne contient ni étape ni tâche.",
  "write/nothing-wanted": "Tapez d’abord ce qu’il faut trouver.",
  "write/not-found": "« {$text} » n’est dans aucun texte des lignes.",
  "write/link-steps": "Choisissez une étape, puis celle après laquelle elle vient.",
  "write/link-itself": "Une étape ne peut pas venir après elle-même.",
  "write/link-ring":
    "« {$step} » ne peut pas venir après « {$other} » : elles s’attendraient l’une l’autre, et personne ne pourrait continuer.",
  "write/way-places": "Choisissez deux lieux de cette procédure.",
  "write/way-to-itself": "Un chemin joint deux lieux ; choisissez-en un autre.",
  "write/way-there": "Un chemin joint déjà « {$one} » et « {$other} ».",
  "write/way-needs-length": "Indiquez la longueur du chemin, en mètres.",
  "write/nobody": "Quelqu’un doit faire l’étape : ajoutez d’abord un autre membre d’équipage.",
  "write/hand-over-itself": "Celui qui donne et celui qui reçoit doivent être deux personnes.",
  "write/not-held": "{$crew} n’a pas {$item} en main à ce moment du plan.",
};
