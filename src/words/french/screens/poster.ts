import type { posterWords as english } from "../../english/screens/poster.ts";
import type { Translated } from "../../translated.ts";

/** The timeline as a large sheet, and the ways in which a plan leaves. */
export const posterWords: Translated<typeof english> = {
  "poster/paper": "Papier",
  "poster/iso": "A3",
  "poster/ansi": "Tabloïd (11 × 17 in)",
  "poster/no-start": "aucun début donné, donc sans UTC",
  "poster/caution":
    "D’après les durées probables. Un plan conseille ; les règles de vol, les règlements locaux et les responsables décident.",
  "poster/step": "{$start :pet} {$who} :",
  "poster/leaves": "Emporter le plan",
  "poster/leave-csv": "Tableau (CSV)",
  "poster/leave-workbook": "Classeur (.xlsx)",
  "poster/leave-poster": "Affiche",
  "poster/not-written":
    "Le classeur n’a pas pu être créé ; la partie de l’application qui l’écrit n’a pas été chargée.",
  "timeline/strip": "Chronologie de PET {$from :hour-minute} à {$to :hour-minute}",
};
