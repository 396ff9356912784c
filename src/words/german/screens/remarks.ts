import type { remarkWords as english } from "../../english/screens/remarks.ts";
import type { Translated } from "../../translated.ts";

/** What readers of a procedure remark, and the panel in which they do. */
export const remarkWords: Translated<typeof english> = {
  "remarks/no-json": "Das ist keine Anmerkung.",
  "remarks/newer": "Die Anmerkung stammt von einer neueren Version des Programms.",
  "remarks/unusable": "Die Anmerkung hat kein verwendbares „{$key}“.",
  "remarks/says-nothing": "Die Anmerkung ist ein Kommentar, der nichts sagt.",
  "remarks/names-nothing": "Die Anmerkung antwortet auf eine andere und sagt nicht, auf welche.",
  "remarks/too-many": "Es gibt mehr als {$most :integer} Anmerkungen. Der Rest wurde ausgelassen.",
  "remarks/open": "{$name} ({$role}): {$says}",
  "remarks/open-before": "{$name} ({$role}), zu Revision {$revision}: {$says}",
  "remarks/open-of-gone-step": "{$name} ({$role}), zum Schritt „{$step}“, den es nicht mehr gibt: {$says}",
  "remarks/title": "Anmerkungen",
  "remarks/button":
    ".input {$count :integer} .match $count 0 {{Anmerkungen}} one {{Anmerkungen ({$count} offen)}} * {{Anmerkungen ({$count} offen)}}",
  "remarks/advises":
    "Eine Anmerkung genehmigt nichts. Ob diese Prozedur ausgeführt werden darf, entscheidet das Verfahren Ihrer Organisation, nicht diese Seite.",
  "remarks/who": "Ihr Name",
  "remarks/role": "Die Rolle, in der Sie sprechen",
  "remarks/needs-who": "Geben Sie zuerst an, wer Sie sind und in welcher Rolle Sie sprechen.",
  "remarks/about": "Zu",
  "remarks/whole": "die ganze Revision",
  "remarks/step": "{$number} {$action}",
  "remarks/gone-step": "Schritt „{$step}“, den es nicht mehr gibt",
  "remarks/comment": "Kommentar",
  "remarks/add": "Kommentar hinzufügen",
  "remarks/agree": "Diesem Text zustimmen",
  "remarks/agree-how":
    "Eine Zustimmung gilt nur für diesen Text. Mit jeder Änderung der Datei gilt sie nicht mehr, und diese Seite sagt das.",
  "remarks/no-digest":
    "Hier kann niemand zustimmen: Diese Seite wird nicht gesichert übertragen, daher lässt sich der Text nicht von anderen unterscheiden. Kommentare sind möglich.",
  "remarks/agreed": "Wer zugestimmt hat",
  "remarks/nobody": "Niemand hat diesem Text zugestimmt.",
  "remarks/agreement": "Zustimmung von {$name} ({$role}): {$what}",
  "remarks/holds": "gilt für diesen Text",
  "remarks/holds-not": "galt einem anderen Text (Revision {$revision}) und gilt für diesen nicht",
  "remarks/withdraw": "Zurücknehmen",
  "remarks/withdraw-whose": "Zustimmung von {$name} zurücknehmen: {$what}",
  "remarks/open-comments": "Offene Kommentare",
  "remarks/no-open": "Kein Kommentar ist offen.",
  "remarks/resolved-comments": "Aufgelöste Kommentare",
  "remarks/of-revision": "{$at :utc} UTC, Revision {$revision}",
  "remarks/resolve": "Auflösen",
  "remarks/resolve-whose": "Auflösen: {$says}",
  "remarks/reopen": "Wieder öffnen",
  "remarks/reopen-whose": "Wieder öffnen: {$says}",
  "remarks/resolved-by": "aufgelöst von {$names :list}",
  "remarks/idle":
    ".input {$count :integer} .match $count one {{Eine Anmerkung hat keine Wirkung: Sie nennt, was nicht hier ist, oder nimmt zurück, was von einer anderen Person ist.}} * {{{$count} Anmerkungen haben keine Wirkung: Sie nennen, was nicht hier ist, oder nehmen zurück, was von einer anderen Person ist.}}",
  "remarks/conflicting":
    ".input {$count :integer} .match $count one {{Eine Anmerkung hat eine id, die eine andere hat, und zählt nicht.}} * {{{$count} Anmerkungen haben gemeinsame ids und sind verschieden: Keine von ihnen zählt.}}",
  "remarks/export": "Als Datei speichern",
  "remarks/import": "Datei einlesen",
  "remarks/taken-in":
    ".input {$added :integer} .match $added one {{{$added} Anmerkung eingelesen, {$known :integer} schon vorhanden. Jede steht bei ihrer Prozedur.}} * {{{$added} Anmerkungen eingelesen, {$known :integer} schon vorhanden. Jede steht bei ihrer Prozedur.}}",
  "remarks/line": "Zeile {$line :integer}: {$why :message}",
  "remarks/not-kept": "Die Anmerkung konnte auf diesem Gerät nicht gespeichert werden: {$why :message}",
};
