export type { FileKind } from "./file-kind.ts";
export { kindOfText } from "./file-kind.ts";
export type { BackupParts, RestoredBackup } from "./full-backup.ts";
export { backupFileName, restoreBackup, writeBackup } from "./full-backup.ts";
export type { ImportedLog } from "./walk-log.ts";
export { exportWalk, importWalkLog, walkFileName, walkInPieces } from "./walk-log.ts";
