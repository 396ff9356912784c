import type { backupWords as english } from "../../english/screens/backup.ts";
import type { Translated } from "../../translated.ts";

/** Why a backup, or a part of it, could not be taken in. */
export const backupWords: Translated<typeof english> = {
  "backup/newer":
    "la sauvegarde a été faite par une version plus récente de ce programme ; mettez le programme à jour",
  "backup/not-a-backup": "ce n’est pas une sauvegarde de ce programme",
  "backup/procedures-missing":
    "la sauvegarde annonce {$told :number} procédures, dont {$found :integer} lisibles ; elle a peut-être été coupée",
  "backup/entries-missing":
    "la sauvegarde annonce {$told :number} entrées, dont {$found :integer} lisibles ; elle a peut-être été coupée",
  "backup/no-text": "sa procédure n’a pas de texte",
  "backup/not-kept": "sa procédure n’a pas été conservée. {$why :message}",
};
