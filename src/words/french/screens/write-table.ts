import type { pastedTableWords as english } from "../../english/screens/write-table.ts";
import type { Translated } from "../../translated.ts";

/** A table pasted from a spreadsheet, and what became of it. */
export const pastedTableWords: Translated<typeof english> = {
  "write/row-without-action": "Elle n’a pas d’action ; ce n’est donc pas une étape.",
  "write/row-without-performer":
    "Personne n’est nommé pour la faire, ni ici ni plus haut ; ce n’est donc pas une étape.",
  "write/row-of-somebody":
    "« {$who} » n’est pas dans l’équipage de cette procédure ; ce n’est donc pas une étape.",
  "write/row-time-lost": "« {$written} » n’est pas une durée lisible ; l’étape n’en a pas.",
  "write/row-place-lost":
    "« {$written} » n’est pas un lieu de cette procédure ; l’étape n’indique pas de lieu.",
  "write/row-after-lost": "« {$written} » n’est ni une ligne du tableau ni une étape de la procédure.",
  "write/row-after-itself": "Elle ne peut pas venir après elle-même.",
  "write/no-steps-in-table": "Aucune ligne du tableau ne peut devenir une étape.",
  "write/headings-number":
    "n°|no|nº|num|numéro|étape n°|n° d'étape|n° d’étape|numéro d'étape|numéro d’étape|id|réf|référence|#",
  "write/headings-task": "tâche|groupe|section|bloc|phase",
  "write/headings-who":
    "qui|par|équipage|exécutant|exécutants|intervenant|intervenants|membre d'équipage|membre d’équipage|ev",
  "write/headings-do": "action|étape|activité|description|faire|quoi|opération|procédure",
  "write/headings-time": "temps|minutes|min|mn|durée|durée prévue|probable|secondes|sec|heures",
  "write/headings-where": "où|lieu|endroit|emplacement|site|position",
  "write/headings-after": "après|prédécesseur|prédécesseurs|vient après|dépend de|attend|antécédent",
  "write/fragments-not-yet":
    "Un fragment peut être inséré dès que la procédure n’a plus de constat de niveau erreur.",
  "write/table-title": "Étapes d’un tableau",
  "write/table-how":
    "Regardez comment chaque colonne est comprise, et changez-le là où c’est inexact. Rien n’est inséré avant cela.",
  "write/table-task": "Étapes collées",
  "write/table-column": "Colonne {$number :integer}",
  "write/table-empty": "rien dedans",
  "write/table-unit": "Un nombre seul, dans les durées, est en",
  "write/unit-minutes": "minutes",
  "write/unit-seconds": "secondes",
  "write/unit-hours": "heures",
  "write/use-do": "ce qui est fait",
  "write/use-who": "qui le fait",
  "write/use-time": "combien de temps cela prend",
  "write/use-after": "après quelles lignes ou étapes",
  "write/use-where": "où",
  "write/use-task": "sa tâche",
  "write/use-number": "son numéro",
  "write/use-none": "non reprise",
  "write/table-taken":
    ".input {$taken :integer} .match $taken one {{{$taken} ligne sur {$of :integer} devient une étape.}} * {{{$taken} lignes sur {$of :integer} deviennent des étapes.}}",
  "write/table-lost": "Ce qui n’a pas pu être repris",
  "write/table-row": "Ligne {$number :integer}",
  "write/table-put":
    ".input {$count :integer} .match $count one {{Insérer {$count} étape}} * {{Insérer {$count} étapes}}",
  "write/table-leave": "Laisser",
};
