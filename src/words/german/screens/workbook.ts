import type { workbookWords as english } from "../../english/screens/workbook.ts";
import type { Translated } from "../../translated.ts";

/** A plan as a table and as a workbook of a spreadsheet. */
export const workbookWords: Translated<typeof english> = {
  "workbook/grid": "Raster",
  "workbook/list": "Liste",
  "workbook/pet": "PET",
  "workbook/utc": "UTC",
  "workbook/windows": "Offene Zeitfenster",
  "workbook/of-procedure": "Prozedur {$procedure}, wie geplant",
  "workbook/of-revision": "Prozedur {$procedure}, Revision {$revision}, wie geplant",
  "workbook/no-start": "Für PET 0 ist kein Zeitpunkt angegeben.",
  "workbook/start": "PET 0 um {$at :utc form=second} UTC",
  "workbook/caution":
    "Ein Plan berät; Flugregeln, örtliche Vorschriften und die Verantwortlichen entscheiden. Änderungen in dieser Tabelle erreichen die Prozedur nicht.",
  "workbook/step-line": "{$start :clock} · {$number} {$action} ({$length :length})",
  "workbook/joint-line": "{$start :clock} · {$number} {$action} ({$length :length}, mit {$crew :list})",
  "workbook/waits": "{$crew} {$seconds :number} s",
  "workbook/waits-for": "{$crew} {$seconds :number} s: {$on :message}",
  "workbook/critical": "kritisch",
  "workbook/column-number": "Nr.",
  "workbook/column-task": "Aufgabe",
  "workbook/column-who": "Wer",
  "workbook/column-do": "Tätigkeit",
  "workbook/column-start": "Beginn (PET)",
  "workbook/column-finish": "Ende (PET)",
  "workbook/column-start-utc": "Beginn (UTC)",
  "workbook/column-finish-utc": "Ende (UTC)",
  "workbook/column-low": "Untere Zeit",
  "workbook/column-likely": "Wahrscheinliche Zeit",
  "workbook/column-high": "Obere Zeit",
  "workbook/column-where": "Wo",
  "workbook/column-after": "Nach",
  "workbook/column-within": "Innerhalb",
  "workbook/column-slack": "Pufferzeit",
  "workbook/column-waits": "Warten davor",
};
