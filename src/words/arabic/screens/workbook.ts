import type { workbookWords as english } from "../../english/screens/workbook.ts";
import type { Translated } from "../../translated.ts";

/** A plan as a table and as a workbook of a spreadsheet. */
export const workbookWords: Translated<typeof english> = {
  "workbook/grid": "شبكة",
  "workbook/list": "قائمة",
  "workbook/pet": "PET",
  "workbook/utc": "UTC",
  "workbook/windows": "النوافذ المفتوحة",
  "workbook/of-procedure": "الإجراء {$procedure}، كما خُطط",
  "workbook/of-revision": "الإجراء {$procedure}، الإصدار {$revision}، كما خُطط",
  "workbook/no-start": "PET 0 بلا لحظة معيّنة.",
  "workbook/start": "PET 0 عند {$at :utc form=second} UTC",
  "workbook/caution":
    "الخطة للمشورة؛ والقرار لقواعد الطيران واللوائح المحلية والمسؤولين. والتغييرات في هذه الورقة لا تصل إلى الإجراء.",
  "workbook/step-line": "{$start :clock} · {$number} {$action} ({$length :length})",
  "workbook/joint-line": "{$start :clock} · {$number} {$action} ({$length :length}، مع {$crew :list})",
  "workbook/waits": "{$crew} ⁦{$seconds :number} s⁩",
  "workbook/waits-for": "{$crew} ⁦{$seconds :number} s⁩: {$on :message}",
  "workbook/critical": "حرجة",
  "workbook/column-number": "الرقم",
  "workbook/column-task": "المهمة",
  "workbook/column-who": "من",
  "workbook/column-do": "العمل",
  "workbook/column-start": "البدء (PET)",
  "workbook/column-finish": "الانتهاء (PET)",
  "workbook/column-start-utc": "البدء (UTC)",
  "workbook/column-finish-utc": "الانتهاء (UTC)",
  "workbook/column-low": "أدنى",
  "workbook/column-likely": "مرجحة",
  "workbook/column-high": "أقصى",
  "workbook/column-where": "أين",
  "workbook/column-after": "بعد",
  "workbook/column-within": "ضمن",
  "workbook/column-slack": "السماح",
  "workbook/column-waits": "الانتظار قبلها",
};
