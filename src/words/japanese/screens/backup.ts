import type { backupWords as english } from "../../english/screens/backup.ts";
import type { Translated } from "../../translated.ts";

/** Why a backup, or a part of it, could not be taken in. */
export const backupWords: Translated<typeof english> = {
  "backup/newer": "バックアップはこのプログラムの新しい版で作られています。プログラムを更新してください",
  "backup/not-a-backup": "このプログラムのバックアップではありません",
  "backup/procedures-missing":
    "バックアップの記載では手順書が{$told :number}件ありますが、読み取れるのは{$found :integer}件です。途中で切れている可能性があります",
  "backup/entries-missing":
    "バックアップの記載ではエントリーが{$told :number}件ありますが、読み取れるのは{$found :integer}件です。途中で切れている可能性があります",
  "backup/no-text": "手順書に本文がありません",
  "backup/not-kept": "手順書を保存できませんでした。{$why :message}",
};
