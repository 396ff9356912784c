import type { marksWords as english } from "../../english/screens/marks.ts";
import type { Translated } from "../../translated.ts";

/** The page of all marks, and its help. */
export const marksWords: Translated<typeof english> = {
  "marks/title": "كل العلامات",
  "marks/what": "كل علامة في كل شاشة ومعناها",
  "marks/braid": "بجانب قائمة الخطوات",
  "marks/step": "عند خطوة",
  "marks/alerts": "إنذارات النشاط",
  "marks/amended": "الخطوة التي مسّها تعديل الخطة تقول كيف، إلى أن يُرى على هذا الجهاز.",
  "marks/notes": "ورقة مطوية الزاوية تعدّ الملاحظات عند الخطوة.",
  "guide/marks-title": "المساعدة: العلامات",
  "guide/marks-page": "كل علامة مرسومة هنا بما يرسمها في شاشتها، وبجانبها معناها.",
  "guide/marks-hue": "اللون لا يقف وحده أبدًا: ما يختلف في اللون يختلف أيضًا في الشكل أو التقطيع أو بكلمة.",
  "guide/marks-themes": "في الليل وبالألوان الخافتة تبقى الأشكال والتقطيعات كما هي.",
  "guide/marks-sample": "موقع العمل هو موقع نشاط التدريب. وحيث لا يمكن قراءته تبقى الجمل بلا صورة.",
  "guide/marks-words":
    "العلامة التي ليست هنا ليست من هذا البرنامج: ابحث عنها فيما رسمه أو كتبه مؤلف الإجراء.",
};
