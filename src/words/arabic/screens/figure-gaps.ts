import type { figureGapWords as english } from "../../english/screens/figure-gaps.ts";
import type { Translated } from "../../translated.ts";

/** The figures of a walk that are not known: what is missing, and why it can or cannot be set while the walk runs. */
export const figureGapWords: Translated<typeof english> = {
  "gap/title": "غير معروف",
  "gap/not-known": "غير معروف",
  "gap/set-it": "سبب عدم معرفته، وما يمكن فعله",
  "gap/turn-back": "بدء العودة",
  "gap/no-limit": "لا يحدد الإجراء حدًا زمنيًا، فلا هامش. الحد جزء من الإجراء ولا يمكن تعيينه أثناء النشاط.",
  "gap/no-forecast":
    "لا يمكن توقّع ما تبقى: لم تعد أي نافذة تتسع له، أو أن خطوات ينتظر بعضها بعضًا. تخطَّ خطوة مع ذكر السبب، أو أغلق النشاط.",
  "gap/no-way-back":
    "لا يمكن تحديد آخر وقت لبدء العودة، إذ لا طريق معروفًا أو ممكنًا إلى ملاذ. الأماكن والطرق جزء من الإجراء ولا يمكن تعيينها أثناء النشاط.",
  "gap/no-end-of-supplies":
    "لا يمكن تحديد آخر وقت لبدء العودة: لا حد زمنيًا، ولا ينفد أي إمداد بمعدله المخطَّط. قراءتان تفصل بينهما خمس دقائق على الأقل تعطيان معدلًا.",
  "gap/nothing-runs-out":
    "لا يمكن تحديد آخر وقت لبدء العودة: لا يحدد الإجراء حدًا زمنيًا ولا إمدادات، ولا يمكن تعيين أي منهما أثناء النشاط.",
  "gap/never-read": "لم تُقرأ قط، فيُعتمد المعدل المخطَّط: {$supplies :list}. القراءة تبيّن الموجود فعلًا.",
  "gap/supply-of": "{$crew} {$supply}",
  "gap/no-light":
    "أوقات {$windows :list} غير معروفة: فُتح النشاط بلا مدار ولا موقع. يختار القائد أحدهما أدناه لكل الأجهزة، أو على المخطط الزمني قبل فتح النشاط.",
  "gap/windows-from-start": "تُعرف أوقات {$windows :list} بعد تشغيل الساعة.",
  "gap/not-started": "لم تُشغَّل الساعة. حتى ذلك الحين كل الأوقات أوقات الخطة، محسوبة من PET 0.",
  "gap/enter-reading": "إدخال قراءة",
  "gap/marker-enters": "هذا الجهاز اللوحي للمراقبة: المسجِّل يُدخل القراءات.",
};
