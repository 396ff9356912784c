import type { practiceWords as english } from "../../english/screens/practice.ts";
import type { Translated } from "../../translated.ts";

/** The guide beside a practice walk, and what offers it. */
export const practiceWords: Translated<typeof english> = {
  "practice/guide": "دليل التدريب",
  "practice/clock": "تمرين · تسير ساعته ما دمت تنظر إليه",
  "practice/put-away": "إخفاء الدليل",
  "practice/bring-back": "إظهار دليل التدريب",
  "practice/finish": "إنهاء التدريب",
  "practice/tried": "جُرّب: {$count :integer} من {$all :integer}",
  "practice/tried-tap": "النقر",
  "practice/tried-joint": "خطوة مشتركة",
  "practice/tried-value": "قيمة خارج الحدود",
  "practice/tried-contingency": "خطة طوارئ",
  "practice/tried-close": "المراجعة",
  "practice/is-tried": "تمت التجربة",
  "practice/not-tried": "ليس بعد",
  "practice/start":
    "أنت IV في الداخل: تقرأ الخطوات وتسجّل بالنقر ما يبلغ به الاثنان في الخارج. انقر «تشغيل ساعة التمرين».",
  "practice/first":
    "لكل فرد من الطاقم خيط على الحافة، ويرتخي خيط من ينتظر. الخطوة الأولى هي {$step} لدى {$crew :list}: انقر «تم» بجانبها.",
  "practice/go-on": "التالية هي الخطوة {$step} لدى {$crew :list}: {$action}. انقر «تم» حين تسمع أنها أُنجزت.",
  "practice/waits":
    "بلغ {$waiting} الخطوة المشتركة {$joint} وينتظر {$missing} عندها: يمتد الخيط مرتخيًا إلى هذه الخطوة. تابع بالخطوة {$step} لدى {$crew :list}.",
  "practice/joint":
    "{$crew :list} كلاهما عند الخطوة {$step}: تجمع عقدة خيطيهما، ونقرة واحدة على «تم» تسجّلها لكليهما.",
  "practice/joint-confirm":
    "{$crew :list} كلاهما عند الخطوة {$step}، حيث تجمع عقدة خيطيهما. يلزم هنا تأكيد: انقر «تأكيد» ثم «تم»، فتُسجَّل لكليهما.",
  "practice/value-outside":
    "تطلب الخطوة {$step} «{$record}». لترى كيف يكون الإنذار، أدخل {$value :quantity}، وهي خارج الحدود المبيَّنة بجانب الحقل.",
  "practice/value": "تطلب الخطوة {$step} «{$record}» من جديد. أدخل {$value :quantity}، ثم انقر «تم».",
  "practice/owed":
    "أُنجزت الخطوة {$step} من دون «{$record}»، وهذا القياس الآن غير مستوفى كما يبيّن الشريط أعلاه. افتح الخطوة في القائمة لإدخاله؛ أو تابع، فيبقى غير مستوفى.",
  "practice/within":
    "هذه القيمة ضمن الحدود، فلا إنذار. لترى إنذارًا، أدخل {$value :quantity} بدلًا منها في «{$record}». {$else :message}",
  "practice/outside":
    "القيمة خارج حدودها: يبيّن ذلك إنذار تحت الساعة. انقر في الأسفل «خطط الطوارئ»، ثم «{$contingency}»، ثم «تفعيلها: عرض ما تؤدي إليه»، ثم «إدخال التعديل». {$else :message}",
  "practice/or-go-on": "أو تابع بالخطوة {$step} لدى {$crew :list}.",
  "practice/go-on-anyhow": "أو اترك ذلك.",
  "practice/brought":
    "خطة الطوارئ الآن ضمن الخطة، وستبيّن المراجعة ما كلّفته. الخطوة {$step} لدى {$crew :list} جزء منها: {$action}. انقر «تم».",
  "practice/close": "اكتملت كل الخطوات. انقر «إغلاق النشاط» تحت القائمة، ثم أغلقه.",
  "practice/nobody-works":
    "لا أحد يستطيع بدء خطوة في هذه اللحظة: تبيّن البطاقات في الأعلى من أو ماذا ينتظر كل فرد.",
  "practice/held": "النشاط موقوف مؤقتًا، وخطواته تنتظر. انقر «رفع الإيقاف» حين يجوز أن يستمر.",
  "practice/closed": "أُغلق النشاط. انقر «قراءة المراجعة» تحت القائمة.",
  "practice/closed-early":
    "أغلقت النشاط قبل نهايته، وهذا مسموح. انقر «قراءة المراجعة» تحت القائمة لترى ما تقوله عن ذلك، أو أعد فتح النشاط هناك.",
  "practice/review":
    "هذه هي المراجعة: ما خُطط له بجانب ما حدث، ومن انتظر من، وكل ما جرى على غير المخطط. كان هذا نشاط التدريب؛ والنشاط التالي لك.",
  "practice/skipped": "تخطّيت الخطوة {$step}. تُحتسب مكتملة، وستذكرها المراجعة.",
  "practice/out-of-order": "سُجّلت الخطوة {$step} خارج الترتيب. قُبل ذلك، وستذكرها المراجعة.",
  "practice/open-again": "أُعيد فتح الخطوة {$step}.",
};
