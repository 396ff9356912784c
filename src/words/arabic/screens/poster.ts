import type { posterWords as english } from "../../english/screens/poster.ts";
import type { Translated } from "../../translated.ts";

/** The timeline as a large sheet, and the ways in which a plan leaves. */
export const posterWords: Translated<typeof english> = {
  "poster/paper": "الورق",
  "poster/iso": "A3",
  "poster/ansi": "Tabloid (⁦11 × 17 in⁩)",
  "poster/no-start": "لم تُذكر بداية، فلا UTC",
  "poster/caution": "بالمدد المرجحة. الخطة للمشورة؛ والقرار لقواعد الطيران واللوائح المحلية والمسؤولين.",
  "poster/step": "{$start :pet} {$who}:",
  "poster/leaves": "أخذ الخطة معك",
  "poster/leave-csv": "جدول (CSV)",
  "poster/leave-workbook": "مصنف (⁦.xlsx⁩)",
  "poster/leave-poster": "ملصق",
  "poster/not-written": "تعذّر إنشاء المصنف؛ لم يُحمَّل جزء التطبيق الذي يكتبه.",
  "timeline/strip": "المخطط الزمني من PET {$from :hour-minute} إلى {$to :hour-minute}",
};
