import type { findingsOfReferencesWords as english } from "../../english/screens/findings-references.ts";
import type { Translated } from "../../translated.ts";

/** What the checker says of ids, references, decisions and times within a file. */
export const findingsOfReferencesWords: Translated<typeof english> = {
  "file/doubled-crew-id": "L’identifiant de membre d’équipage « {$id} » est employé deux fois.",
  "file/doubled-place-id": "L’identifiant de lieu « {$id} » est employé deux fois.",
  "file/doubled-item-id": "L’identifiant d’objet « {$id} » est employé deux fois.",
  "file/doubled-window-id": "L’identifiant de fenêtre « {$id} » est employé deux fois.",
  "file/doubled-step-id": "L’identifiant d’étape « {$id} » est employé deux fois.",
  "file/doubled-decision-id": "L’identifiant de décision « {$id} » est employé deux fois.",
  "file/doubled-supply-id": "L’identifiant de consommable « {$id} » est employé deux fois.",
  "file/doubled-task-id": "L’identifiant de tâche « {$id} » est employé deux fois.",
  "file/doubled-contingency-id": "L’identifiant de procédure de secours « {$id} » est employé deux fois.",
  "file/doubled-watch-id": "L’identifiant de contrôle « {$id} » est employé deux fois.",
  "file/doubled-state-id": "L’identifiant d’état « {$id} » est employé deux fois.",
  "file/doubled-picture-id": "L’identifiant d’image « {$id} » est employé deux fois.",
  "file/doubled-record-id": "L’identifiant de mesure « {$id} » est employé deux fois.",
  "file/no-such-crew-member": "Le membre d’équipage « {$id} » n’existe pas.",
  "file/no-such-crew-member-meant":
    "Le membre d’équipage « {$id} » n’existe pas. S’agit-il de « {$meant} » ?",
  "file/no-such-place": "Le lieu « {$id} » n’existe pas.",
  "file/no-such-place-meant": "Le lieu « {$id} » n’existe pas. S’agit-il de « {$meant} » ?",
  "file/no-such-item": "L’objet « {$id} » n’existe pas.",
  "file/no-such-item-meant": "L’objet « {$id} » n’existe pas. S’agit-il de « {$meant} » ?",
  "file/no-such-window": "La fenêtre « {$id} » n’existe pas.",
  "file/no-such-window-meant": "La fenêtre « {$id} » n’existe pas. S’agit-il de « {$meant} » ?",
  "file/no-such-step": "L’étape « {$id} » n’existe pas.",
  "file/no-such-step-meant": "L’étape « {$id} » n’existe pas. S’agit-il de « {$meant} » ?",
  "file/no-such-decision": "La décision « {$id} » n’existe pas.",
  "file/no-such-decision-meant": "La décision « {$id} » n’existe pas. S’agit-il de « {$meant} » ?",
  "file/no-such-supply": "Le consommable « {$id} » n’existe pas.",
  "file/no-such-supply-meant": "Le consommable « {$id} » n’existe pas. S’agit-il de « {$meant} » ?",
  "file/no-such-state": "L’état « {$id} » n’existe pas.",
  "file/no-such-state-meant": "L’état « {$id} » n’existe pas. S’agit-il de « {$meant} » ?",
  "file/picture-not-of-type": "L’image « {$id} » se dit du type {$type}, mais son contenu est d’un autre.",
  "file/pictures-too-large":
    "Les images prennent ensemble {$size :number maximumFractionDigits=2} MB. Au plus {$most :number} MB sont lus.",
  "file/no-such-picture": "L’image « {$id} » n’existe pas.",
  "file/no-such-picture-meant": "L’image « {$id} » n’existe pas. S’agit-il de « {$meant} » ?",
  "state/no-such-value": "« {$value} » n’est pas une valeur de l’état « {$state} ».",
  "state/no-such-value-meant":
    "« {$value} » n’est pas une valeur de l’état « {$state} ». S’agit-il de « {$meant} » ?",
  "state/value-twice": "Une valeur de l’état « {$state} » figure deux fois.",
  "file/route-to-itself": "Un chemin doit mener d’un lieu à un autre.",
  "file/watch-at-once": "Un contrôle doit revenir après un certain temps, pas aussitôt.",
  "decision/expected-not-there": "« {$outcome} » n’est pas l’une des issues de cette décision.",
  "decision/outcome-twice": "Une issue figure deux fois.",
  "file/crew-twice": "Un membre d’équipage est nommé deux fois dans cette étape.",
  "file/limits-crossed":
    "La plus petite valeur admise, {$least :number}, est supérieure à la plus grande, {$most :number}.",
  "order/after-itself": "Une étape ne peut pas venir après elle-même.",
  "order/contingency":
    "« {$step} » appartient à une procédure de secours et peut donc ne jamais être faite ; rien en dehors ne peut venir après elle.",
  "order/get-ahead":
    "« {$step} » est facultative et peut être laissée ; aucune étape en dehors de sa tâche ne peut venir après elle.",
  "decision/later":
    "La décision « {$decision} » n’est pas prise par une étape antérieure dans l’ordre de lecture.",
  "decision/no-such-outcome": "« {$outcome} » n’est pas une issue de la décision « {$decision} ».",
  "time/missing": "Seul un déplacement peut se passer de durée ; dites combien de temps dure cette étape.",
  "time/out-of-order": "Les durées ne doivent pas décroître de basse à probable puis à haute.",
  "window/no-spans": "Une fenêtre listée a besoin de ses intervalles.",
  "window/empty-span": "Un intervalle doit finir après son début.",
  "custody/inside-itself": "« {$item} » serait dans lui-même.",
};
