import type { decisionWords as english } from "../../english/screens/decisions.ts";
import type { Translated } from "../../translated.ts";

/** A decision on the follow screen: what each outcome would lead to, and what holds while it is asked again. */
export const decisionWords: Translated<typeof english> = {
  "decision/asked-again":
    "Wieder offen: {$outcome} bleibt gültig, bis neu entschieden ist, und der Zweig wartet.",
  "decision/branch-asked-again":
    "Schritt {$number} wird neu entschieden: Dies liegt auf dem Zweig {$outcome}, der bis dahin wartet.",
  "decision/leads-to": "Wohin jedes Ergebnis führen würde, von hier an nach wahrscheinlichen Zeiten",
  "decision/expected": "erwartet",
  "decision/in-force": "gültig",
  "decision/no-steps": "Kein eigener Schritt.",
  "decision/steps":
    ".input {$count :integer} .match $count one {{Ein eigener Schritt.}} * {{{$count} eigene Schritte.}}",
  "decision/steps-at":
    ".input {$count :integer} .match $count one {{Ein eigener Schritt: {$places :list}.}} * {{{$count} eigene Schritte: {$places :list}.}}",
  "decision/joint": "Der gemeinsame Schritt {$step} kann in {$time :length} beginnen.",
  "forecast/finish": "Ende {$finish :finish}.",
  "forecast/finish-margin": "Ende {$finish :finish}, {$margin :margin} Reserve.",
  "forecast/finish-over": "Ende {$finish :finish}, {$margin :length} über dem Zeitlimit.",
  "forecast/none-with-it": "Damit ist für den Rest keine Prognose möglich.",
  "decision/before-start": "Zeiten werden gesagt, wenn die Uhr läuft.",
};
