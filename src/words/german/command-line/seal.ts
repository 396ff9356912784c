import type { sealSentences as english } from "../../english/command-line/seal.ts";
import type { Translated } from "../../translated.ts";

/** What `verify` and `extract` print. */
export const sealSentences: Translated<typeof english> = {
  "cli/verify-not-read": "{$file}, Zeile {$line :integer}, wird nicht gelesen: {$why}.",
  "cli/verify-no-key":
    "„{$key}“ ist kein Schlüssel eines Hubs: 43 Zeichen, wie sein Startbildschirm ihn zeigt.",
  "cli/verify-no-code": "„{$code}“ ist kein Code: zwölf Buchstaben in Dreiergruppen.",
  "cli/verify-source": "Quelle",
  "cli/verify-by": "Zugelassen als",
  "cli/verify-admitted": "{$name}, {$role}",
  "cli/verify-verdict": "Urteil",
  "cli/verify-entries": "Einträge",
  "cli/verify-sealed": "Versiegelt",
  "cli/verify-behind": "Dahinter",
  "cli/verify-finding": "{$source}: {$what}.",
  "cli/verify-finding-at": "{$source}, Nummer {$number :integer}: {$what}.",
  "cli/verify-checkpoint":
    ".input {$entries :integer} .match $entries one {{Prüfpunkt {$code} über {$entries} Eintrag von {$by} ({$trust}): {$state}.}} * {{Prüfpunkt {$code} über {$entries} Einträge von {$by} ({$trust}): {$state}.}}",
  "cli/verify-code":
    ".input {$entries :integer} .match $entries one {{Der eine Eintrag hier: Code {$code}, Wurzel {$root}, Reihenfolge {$order}.}} * {{Alle {$entries} Einträge hier: Code {$code}, Wurzel {$root}, Reihenfolge {$order}.}}",
  "cli/verify-spelled": "Zum Vorlesen: {$spelled}.",
  "cli/verify-hub": "{$source} hat den Schlüssel {$key}.",
  "cli/verify-extract-checkpoint": "Der Prüfpunkt von {$by} ({$trust}): Code {$code}, Wurzel {$root}.",
  "cli/extract-nothing": "Kein Eintrag von {$file} wurde gewählt: Nichts wird geschrieben.",
  "cli/extract-choose":
    "Geben Sie mit --step oder --kind an, was zu nehmen ist: Ein Auszug von allem ist das Protokoll selbst.",
  "cli/extract-no-checkpoint":
    "{$file} hat keinen passenden Prüfpunkt eines Hubs: Es gibt nichts, womit sich ein Auszug beweisen ließe.",
  "cli/extract-behind":
    ".input {$count :integer} .match $count one {{Einen der gewählten Einträge enthielt kein Prüfpunkt: Nichts wird geschrieben. Nehmen Sie das Protokoll noch einmal, wenn der Hub einen weiteren Prüfpunkt gesetzt hat.}} * {{{$count} der gewählten Einträge enthielt kein Prüfpunkt: Nichts wird geschrieben. Nehmen Sie das Protokoll noch einmal, wenn der Hub einen weiteren Prüfpunkt gesetzt hat.}}",
  "cli/extract-made":
    ".input {$chosen :integer} .match $chosen one {{{$file}: {$chosen} Eintrag in voller Länge, {$left :integer} weggelassen.}} * {{{$file}: {$chosen} Einträge in voller Länge, {$left :integer} weggelassen.}}",
  "cli/verify-same":
    ".input {$entries :integer} .match $entries one {{Der angegebene Code ist derselbe: Er gilt für {$entries} Eintrag.}} * {{Der angegebene Code ist derselbe: Er gilt für {$entries} Einträge.}}",
  "cli/verify-differs":
    "Der angegebene Code gehört nicht zu diesem Protokoll: Er weicht ab in Gruppe {$groups :list}. Falsch verstanden, oder dort sind andere Einträge.",
};
