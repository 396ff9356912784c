import type { backupWords as english } from "../../english/screens/backup.ts";
import type { Translated } from "../../translated.ts";

/** Why a backup, or a part of it, could not be taken in. */
export const backupWords: Translated<typeof english> = {
  "backup/newer": "أُنشئت النسخة الاحتياطية بنسخة أحدث من هذا البرنامج؛ حدّث البرنامج",
  "backup/not-a-backup": "ليست هذه نسخة احتياطية من هذا البرنامج",
  "backup/procedures-missing":
    "عدد الإجراءات المذكور في النسخة الاحتياطية {$told :number}، والمقروء منها {$found :integer}؛ ربما بُترت النسخة",
  "backup/entries-missing":
    "عدد القيود المذكور في النسخة الاحتياطية {$told :number}، والمقروء منها {$found :integer}؛ ربما بُترت النسخة",
  "backup/no-text": "إجراؤه بلا نص",
  "backup/not-kept": "لم يُحفظ إجراؤه. {$why :message}",
};
