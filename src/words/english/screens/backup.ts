/** Why a backup, or a part of it, could not be taken in. */
export const backupWords = {
  "backup/newer": "the backup was made by a newer version of this program; update the program",
  "backup/not-a-backup": "this is not a backup of this program",
  "backup/procedures-missing":
    "the backup tells of {$told :number} procedures, of which {$found :integer} can be read; it may have been cut short",
  "backup/entries-missing":
    "the backup tells of {$told :number} entries, of which {$found :integer} can be read; it may have been cut short",
  "backup/no-text": "its procedure has no text",
  "backup/not-kept": "its procedure was not kept. {$why :message}",
} as const;
