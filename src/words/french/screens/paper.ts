import type { paperWords as english } from "../../english/screens/paper.ts";
import type { Translated } from "../../translated.ts";

/** Steps that were done while the crew worked from paper, entered afterwards with their times. */
export const paperWords: Translated<typeof english> = {
  "paper/title": "Saisir depuis le papier",
  "paper/how":
    "Cochez ce qui a été fait entre-temps, et écrivez quand chaque étape a été faite. Tout est saisi d’un coup, avec ces heures, par {$who}.",
  "paper/owed":
    "Les valeurs et les confirmations se saisissent ensuite à leurs étapes : ce qui manque figure sous « À compléter ».",
  "paper/clock": "Les heures sont",
  "paper/clock-pet": "PET, heures:minutes",
  "paper/clock-utc": "UTC, heures:minutes",
  "paper/step": "{$number} {$crew} : {$step}",
  "paper/done-at": "Heure de l’étape {$number}",
  "paper/outcome": "Issue de l’étape {$number}",
  "paper/choose-outcome": "Choisir l’issue",
  "paper/none":
    "Il n’y a aucune étape à saisir : chacune est terminée, ou dépend d’une décision qui n’a pas été prise.",
  "paper/more":
    ".input {$count :integer} .match $count one {{Montrer {$count} étape de plus}} * {{Montrer {$count} étapes de plus}}",
  "paper/enter":
    ".input {$count :integer} .match $count one {{Saisir {$count} étape}} * {{Saisir {$count} étapes}}",
  "paper/entered":
    ".input {$count :integer} .match $count one {{{$count} étape a été saisie.}} * {{{$count} étapes ont été saisies.}}",
  "paper/refused":
    ".input {$count :integer} .match $count one {{Rien n’a été saisi : {$count} étape dit pourquoi.}} * {{Rien n’a été saisi : {$count} étapes disent pourquoi.}}",
  "paper/nothing-ticked": "Rien n’est coché.",
  "paper/not-open": "Cette étape est déjà terminée, ou n’est pas exécutée d’après l’issue des décisions.",
  "paper/no-time":
    "Écrivez quand elle a été faite : heures:minutes comme 1:05, ou avec les secondes 1:05:30.",
  "paper/before-zero": "C’est avant le lancement de l’horloge, à {$zero :utc form=time-second} UTC.",
  "paper/in-future": "C’est plus tard que maintenant, PET {$now :clock} ou {$utc :utc form=time-second} UTC.",
  "paper/needs-outcome": "Choisissez l’issue.",
  "paper/hangs-on":
    "Elle suit l’étape {$number} ({$step}), dont l’issue n’a pas été celle attendue : saisissez d’abord celle-là, puis celle-ci.",
  "paper/after-open":
    "Elle suit l’étape {$number} ({$step}), qui n’est pas faite : cochez celle-là aussi. Si elle a vraiment été faite hors ordre, ouvrez cette étape dans la liste et dites pourquoi.",
  "paper/after-later":
    "Elle suit l’étape {$number} ({$step}), et celle-là a été faite plus tard, à PET {$at :clock}.",
};
