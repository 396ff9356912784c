import type { workbookWords as english } from "../../english/screens/workbook.ts";
import type { Translated } from "../../translated.ts";

/** A plan as a table and as a workbook of a spreadsheet. */
export const workbookWords: Translated<typeof english> = {
  "workbook/grid": "Grille",
  "workbook/list": "Liste",
  "workbook/pet": "PET",
  "workbook/utc": "UTC",
  "workbook/windows": "Fenêtres ouvertes",
  "workbook/of-procedure": "Procédure {$procedure}, telle que planifiée",
  "workbook/of-revision": "Procédure {$procedure}, révision {$revision}, telle que planifiée",
  "workbook/no-start": "PET 0 n’est à aucun instant donné.",
  "workbook/start": "PET 0 le {$at :utc form=second} UTC",
  "workbook/caution":
    "Un plan conseille ; les règles de vol, les règlements locaux et les responsables décident. Les changements faits dans cette feuille n’atteignent pas la procédure.",
  "workbook/step-line": "{$start :clock} · {$number} {$action} ({$length :length})",
  "workbook/joint-line": "{$start :clock} · {$number} {$action} ({$length :length}, avec {$crew :list})",
  "workbook/waits": "{$crew} {$seconds :number} s",
  "workbook/waits-for": "{$crew} {$seconds :number} s : {$on :message}",
  "workbook/critical": "critique",
  "workbook/column-number": "N°",
  "workbook/column-task": "Tâche",
  "workbook/column-who": "Qui",
  "workbook/column-do": "Action",
  "workbook/column-start": "Début (PET)",
  "workbook/column-finish": "Fin (PET)",
  "workbook/column-start-utc": "Début (UTC)",
  "workbook/column-finish-utc": "Fin (UTC)",
  "workbook/column-low": "Basse",
  "workbook/column-likely": "Probable",
  "workbook/column-high": "Haute",
  "workbook/column-where": "Où",
  "workbook/column-after": "Après",
  "workbook/column-within": "Dans",
  "workbook/column-slack": "Battement",
  "workbook/column-waits": "Attentes avant",
};
