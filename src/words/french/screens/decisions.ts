import type { decisionWords as english } from "../../english/screens/decisions.ts";
import type { Translated } from "../../translated.ts";

/** A decision on the follow screen: what each outcome would lead to, and what holds while it is asked again. */
export const decisionWords: Translated<typeof english> = {
  "decision/asked-again":
    "Rouverte : {$outcome} reste en vigueur jusqu’à une nouvelle décision, et sa branche attend.",
  "decision/branch-asked-again":
    "L’étape {$number} est décidée de nouveau : celle-ci est sur la branche {$outcome}, qui attend jusque-là.",
  "decision/leads-to": "Ce que donnerait chaque issue, d’après les durées probables à partir d’ici",
  "decision/expected": "attendue",
  "decision/in-force": "en vigueur",
  "decision/no-steps": "Aucune étape propre.",
  "decision/steps":
    ".input {$count :integer} .match $count one {{{$count} étape propre.}} * {{{$count} étapes propres.}}",
  "decision/steps-at":
    ".input {$count :integer} .match $count one {{{$count} étape propre : {$places :list}.}} * {{{$count} étapes propres : {$places :list}.}}",
  "decision/joint": "L’étape commune {$step} peut commencer dans {$time :length}.",
  "forecast/finish": "Fin {$finish :finish}.",
  "forecast/finish-margin": "Fin {$finish :finish}, marge {$margin :margin}.",
  "forecast/finish-over": "Fin {$finish :finish}, {$margin :length} de trop.",
  "forecast/none-with-it": "Avec cette issue, aucune prévision du reste n’est possible.",
  "decision/before-start": "Les heures sont données quand l’horloge tourne.",
};
