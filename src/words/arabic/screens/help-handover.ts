import type { helpOfHandoverWords as english } from "../../english/screens/help-handover.ts";
import type { Translated } from "../../translated.ts";

/** The help of the handover. */
export const helpOfHandoverWords: Translated<typeof english> = {
  "guide/handover": "مساعدة: التسليم",
  "guide/handover-what":
    "صفحة واحدة تبيّن حال النشاط لمن يتسلّمه: الإنذارات والحدود والطاقم وغير المستوفى وما جرى على نحو آخر والإمدادات والحالات والأغراض.",
  "guide/handover-moment": "تصح للحظة المذكورة في رأسها، ولسجل هذا الجهاز. ويحدّثها «إعداده من جديد».",
  "guide/handover-paper":
    "«الإجراء كما هو الآن» هو الإجراء الورقي مع تأشير ما أُنجز وملء ما هو معروف، للمتابعة على الورق.",
  "guide/handover-figures":
    "الحد الأحمر وآخر وقت لبدء العودة توقّعان، من القراءات الأخيرة أو المعدل المخطَّط. والإمداد الذي لم يُقرأ قط يتبع الخطة.",
  "guide/handover-late":
    "ما أدخلته أجهزة أخرى ولم ترسله بعد غير وارد فيها. ويذكر الرأس آخر قيد وارد: اسأل عمّا ينقص.",
  "guide/handover-unseen": "الإنذار الذي لم يطّلع عليه أحد مذكور بهذه الصفة. اقرأه بصوت مسموع.",
};
