import type { paperWords as english } from "../../english/screens/paper.ts";
import type { Translated } from "../../translated.ts";

/** Steps that were done while the crew worked from paper, entered afterwards with their times. */
export const paperWords: Translated<typeof english> = {
  "paper/title": "الإدخال من الورق",
  "paper/how":
    "أشّر على ما أُنجز في أثناء ذلك، واكتب متى أُنجز كل منه. ويُدخل كله دفعة واحدة، بهذه الأوقات، باسم {$who}.",
  "paper/owed": "تُدخل القيم والتأكيدات بعد ذلك عند خطواتها: وما ينقص يقف تحت «غير المستوفى».",
  "paper/clock": "الأوقات هي",
  "paper/clock-pet": "PET، ساعات:دقائق",
  "paper/clock-utc": "UTC، ساعات:دقائق",
  "paper/step": "{$number} {$crew}: {$step}",
  "paper/done-at": "وقت الخطوة {$number}",
  "paper/outcome": "نتيجة الخطوة {$number}",
  "paper/choose-outcome": "اختر النتيجة",
  "paper/none": "لا خطوة للإدخال: كل خطوة مكتملة، أو متوقفة على قرار لم يُتخذ.",
  "paper/more":
    ".input {$count :integer} .match $count zero {{عرض {$count} خطوة أخرى}} one {{عرض خطوة أخرى}} two {{عرض خطوتين أخريين}} few {{عرض {$count} خطوات أخرى}} many {{عرض {$count} خطوة أخرى}} * {{عرض {$count} خطوة أخرى}}",
  "paper/enter":
    ".input {$count :integer} .match $count zero {{إدخال {$count} خطوة}} one {{إدخال خطوة واحدة}} two {{إدخال خطوتين}} few {{إدخال {$count} خطوات}} many {{إدخال {$count} خطوة}} * {{إدخال {$count} خطوة}}",
  "paper/entered":
    ".input {$count :integer} .match $count zero {{أُدخلت {$count} خطوة.}} one {{أُدخلت خطوة واحدة.}} two {{أُدخلت خطوتان.}} few {{أُدخلت {$count} خطوات.}} many {{أُدخلت {$count} خطوة.}} * {{أُدخلت {$count} خطوة.}}",
  "paper/refused":
    ".input {$count :integer} .match $count zero {{لم يُدخل شيء: السبب مذكور عند {$count} خطوة.}} one {{لم يُدخل شيء: السبب مذكور عند خطوة واحدة.}} two {{لم يُدخل شيء: السبب مذكور عند خطوتين.}} few {{لم يُدخل شيء: السبب مذكور عند {$count} خطوات.}} many {{لم يُدخل شيء: السبب مذكور عند {$count} خطوة.}} * {{لم يُدخل شيء: السبب مذكور عند {$count} خطوة.}}",
  "paper/nothing-ticked": "لم يُؤشَّر على شيء.",
  "paper/not-open": "هذه الخطوة مكتملة من قبل، أو لا تُنفَّذ بحسب نتائج القرارات.",
  "paper/no-time": "اكتب متى أُنجزت: ساعات:دقائق مثل 1:05، أو مع الثواني 1:05:30.",
  "paper/before-zero": "ذلك قبل تشغيل الساعة، عند {$zero :utc form=time-second} UTC.",
  "paper/in-future": "ذلك بعد الآن، PET {$now :clock} أو {$utc :utc form=time-second} UTC.",
  "paper/needs-outcome": "اختر النتيجة.",
  "paper/hangs-on": "تلي الخطوة {$number} ({$step})، التي لم تأتِ بالنتيجة المتوقعة: أدخل تلك أولًا، ثم هذه.",
  "paper/after-open":
    "تلي الخطوة {$number} ({$step})، التي لم تُنجز: أشّر على تلك أيضًا. وإن أُنجزت فعلًا خارج الترتيب، فافتح هذه الخطوة في القائمة واذكر السبب.",
  "paper/after-later": "تلي الخطوة {$number} ({$step})، وقد أُنجزت تلك بعد ذلك، عند PET {$at :clock}.",
};
