import type { posterWords as english } from "../../english/screens/poster.ts";
import type { Translated } from "../../translated.ts";

/** The timeline as a large sheet, and the ways in which a plan leaves. */
export const posterWords: Translated<typeof english> = {
  "poster/paper": "Papier",
  "poster/iso": "A3",
  "poster/ansi": "Tabloid (11 × 17 in)",
  "poster/no-start": "kein Beginn angegeben, daher ohne UTC",
  "poster/caution":
    "Nach wahrscheinlichen Zeiten. Ein Plan berät; Flugregeln, örtliche Vorschriften und die Verantwortlichen entscheiden.",
  "poster/step": "{$start :pet} {$who}:",
  "poster/leaves": "Plan mitnehmen",
  "poster/leave-csv": "Tabelle (CSV)",
  "poster/leave-workbook": "Arbeitsmappe (.xlsx)",
  "poster/leave-poster": "Poster",
  "poster/not-written":
    "Die Arbeitsmappe konnte nicht erstellt werden; der Teil der App, der sie schreibt, wurde nicht geladen.",
  "timeline/strip": "Zeitleiste von PET {$from :hour-minute} bis {$to :hour-minute}",
};
