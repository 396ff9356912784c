import type { helpOfCompareWords as english } from "../../english/screens/help-compare.ts";
import type { Translated } from "../../translated.ts";

/** The help of comparing and merging. */
export const helpOfCompareWords: Translated<typeof english> = {
  "guide/compare": "مساعدة: المقارنة",
  "guide/compare-changes":
    "يذكر قسم «ما تغيّر» كل تغيير بمهمته. تُعرف الخطوة بمعرّفها: الخطوة التي أُعطيت معرّفًا آخر تُعدّ مُزالة ومضافة.",
  "guide/compare-flag": "في المخططين الزمنيين تدل راية على بداية شريط على خطوة تغيّرت؛ وللمخططين مقياس واحد.",
  "guide/compare-choose": "يُختار الإصداران أعلاه. ويُقارن الملف دون وضعه على الرف، ويُنسى مع صفحته.",
  "guide/compare-print": "الصفحة المطبوعة هي الإصدار الأحدث، مع خط في الهامش بجانب كل خطوة تغيّرت.",
  "guide/compare-merge":
    "للدمج اختر الإصدار الذي أُعدّ منه كلاهما. ما غيّره أحدهما فقط يؤخذ. وحيث غيّر كلاهما الشيء نفسه لا يؤخذ شيء إلى أن تختار.",
  "guide/compare-effect":
    "يُخطَّط كلاهما كما هو متوقع، بلا مهام إضافية، وبالبداية والضوء نفسيهما. ويكون المأخذ هو نفسه إذا كان نصه هو نفسه.",
  "guide/compare-not-there":
    "الإصدار غير الموجود على هذا الجهاز لا تمكن مقارنته: استورد ملفه. ولا يصح الدمج إلا بالإصدار الذي أُعدّ منه كلاهما فعلًا؛ أما غيره فيعيد ما أُزيل.",
};
