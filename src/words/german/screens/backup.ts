import type { backupWords as english } from "../../english/screens/backup.ts";
import type { Translated } from "../../translated.ts";

/** Why a backup, or a part of it, could not be taken in. */
export const backupWords: Translated<typeof english> = {
  "backup/newer":
    "die Sicherung stammt von einer neueren Version dieses Programms; aktualisieren Sie das Programm",
  "backup/not-a-backup": "das ist keine Sicherung dieses Programms",
  "backup/procedures-missing":
    "die Sicherung nennt {$told :number} Prozeduren, von denen {$found :integer} lesbar sind; vielleicht ist sie abgeschnitten",
  "backup/entries-missing":
    "die Sicherung nennt {$told :number} Einträge, von denen {$found :integer} lesbar sind; vielleicht ist sie abgeschnitten",
  "backup/no-text": "ihre Prozedur hat keinen Text",
  "backup/not-kept": "ihre Prozedur wurde nicht gespeichert. {$why :message}",
};
