import type { fragmentWords as english } from "../../english/screens/fragments.ts";
import type { Translated } from "../../translated.ts";

/** Steps that are used again: what is wrong with a fragment, and the panel that puts one in. */
export const fragmentWords: Translated<typeof english> = {
  "fragment/not-json": "Ce n’est pas du JSON.",
  "fragment/newer": "Il vient d’une version plus récente du programme.",
  "fragment/unusable": "Il n’y a pas de « {$key} » utilisable.",
  "fragment/blank-doubled": "Deux champs à remplir s’appellent « {$blank} ».",
  "fragment/no-such-blank": "Le champ à remplir « {$blank} » n’existe pas.",
  "fragment/time-in-text":
    "Le champ à remplir « {$blank} » est une durée, qui ne peut pas figurer dans un texte.",
  "fragment/blank-empty": "« {$label} » reste à remplir.",
  "fragment/blank-not-there": "Ce qui remplit « {$label} » n’est pas dans cette procédure.",
  "fragment/no-such-place": "La place où l’insérer n’est pas dans cette procédure.",
  "fragment/steps-or-tasks": "Il contient soit des étapes, soit des tâches.",
  "fragment/tasks-go-behind-task": "Un fragment de tâches se place derrière une tâche.",
  "fragments/title": "Fragments",
  "fragments/how":
    "Un fragment est un groupe d’étapes ou de tâches réutilisé. Remplissez ses champs, dites où il va, et regardez ce que cela donne : rien n’est inséré avant que vous le disiez.",
  "fragments/which": "Fragment",
  "fragments/name": "{$title}, rév. {$revision}",
  "fragments/from-file": "D’un fichier…",
  "fragments/cannot-be-read": "« {$name} » ne peut pas être lu comme un fragment :",
  "fragments/choose": "– choisir –",
  "fragments/minutes": "{$label}, en minutes",
  "fragments/goes": "Il va",
  "fragments/behind-step": "derrière {$number} {$action}",
  "fragments/behind-task": "comme tâche à part derrière « {$task} »",
  "fragments/tasks-behind-task": "avec ses tâches derrière « {$task} »",
  "fragments/put-in": "L’insérer",
  "fragments/about": "{$fragment} inséré",
  "fragments/offers": "Fragments insérés, d’une autre révision",
  "fragments/offer":
    "{$fragment} : la révision {$revision} a été insérée comme {$use} ; la révision {$newer} est ici.",
  "fragments/blind":
    "La révision insérée n’est pas connue ici. Prendre ces changements défait ce qui a été changé depuis dans ces étapes.",
  "fragments/nothing-new": "Rien ne changerait, sauf la révision.",
  "fragments/conflicts": "Le fragment et cette procédure ont changé la même chose ; rien n’est choisi :",
  "fragments/take": "Prendre ces changements",
  "fragments/take-which": "Prendre les changements de {$fragment} dans {$use}",
  "fragments/taken": "{$fragment} à la révision {$revision}",
};
