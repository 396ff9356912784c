import type { hubAnswerWords as english } from "../../english/hub/answers.ts";
import type { Translated } from "../../translated.ts";

/** What a hub answers to whoever asks it, beside the code for programs. */
export const hubAnswerWords: Translated<typeof english> = {
  "answer/body-too-large": "المتن أكبر مما ينبغي: أرسله في أجزاء أصغر.",
  "answer/too-much-a-minute": "يرسل هذا الجهاز أكثر مما ينبغي دفعة واحدة: انتظر قليلًا.",
  "answer/media-type":
    "أرسل application/json أو application/cloudevents-batch+json أو application/cloudevents+json.",
  "answer/content-length": "طول المتن ليس ما يذكره Content-Length.",
  "answer/bad-address": "العنوان غير مكتوب بالشكل المطلوب للعناوين.",
  "answer/own-mistake": "حدث في المركز خطأ داخلي؛ وتذكر وحدة التحكم المزيد.",
  "answer/headers-too-large": "الترويسات أكبر من ⁦16 kB⁩.",
  "answer/too-slow": "استغرق وصول الطلب وقتًا أطول مما ينبغي.",
  "answer/full": "لدى هذا المركز أكبر عدد من الاتصالات يستطيع حمله: حاول من جديد قريبًا.",
  "answer/other-name": "لا يُقدَّم هذا المركز بهذا الاسم: افتحه بعنوانه، أو شغّله بالخيار ⁦--also-as⁩ مع الاسم.",
  "answer/not-understood": "لا يمكن فهم الطلب.",
  "judge/no-entry": "ليس قيدًا: {$why :message}.",
  "judge/control-characters": "ليس قيدًا: في مصدره أو معرّفه محارف تحكم.",
  "judge/other-walk": "موضوعه ليس النشاط الذي أُرسل إليه.",
  "judge/seal-does-not-fit": "ختمه لا يطابق المفتاح الذي انضم به جهازه.",
  "judge/not-by-role": "لا تجوز كتابته: {$why :message}.",
  "judge/too-long": "عدد محارفه {$length :integer}، والحد الأقصى هنا لقيد من نوعه {$most :integer}: اختصره.",
  "judge/no-room": "لم يعد له متسع: امتلأ النشاط، أو حصة هذا الجهاز منه.",
  "judge/ahead":
    "قيمة hlc فيه متقدمة ⁦{$seconds :integer} s⁩ على ساعة المركز: اضبط ساعة الجهاز واختم القيد بوقت جديد.",
  "judge/time-ahead":
    "وقته متقدم على ساعة المركز بأيام عددها {$days :integer}: اضبط ساعة الجهاز أو ساعة المركز.",
  "judge/own-device": "هو من جهاز أدخله هذا المركز نفسه، وذلك الجهاز يأتي بقيوده؛ نُحّي هذا القيد جانبًا.",
  "judge/conflict": "يوجد هنا من قبل قيد آخر بهذا المصدر والمعرّف؛ نُحّي هذا القيد جانبًا.",
  "answer/no-token": "انضم إلى النشاط أولًا: يحتاج هذا إلى رمز وصول.",
  "answer/bad-token": "رمز الوصول هذا غير صالح (أو لم يعد صالحًا): انضم إلى النشاط من جديد.",
  "answer/cross-site": "لا يجوز لصفحة من موقع آخر أن تفعل هذا.",
  "answer/other-walk": "رمز الوصول هذا لنشاط آخر.",
  "answer/bad-walk": "ليس هذا مكتوبًا بالشكل المطلوب لمعرّف نشاط.",
  "answer/no-device": "رمز المالك ليس لجهاز: انضم إلى النشاط.",
  "answer/lead-only": "لا يجوز هذا إلا لقائد النشاط.",
  "answer/bad-code": "هذا الرمز غير صالح (أو لم يعد صالحًا): اطلب غيره.",
  "answer/code-used": "أدخل هذا الرمز كل ما يجوز له من أجهزة: اطلب غيره.",
  "answer/walk-needed": "رمز المالك ليس لنشاط بعينه: اذكر أي نشاط.",
  "answer/relay-by-owner": "لا يُدخل مركزًا آخر إلا مالك المركز: أنشئ الرمز له برمز المالك.",
  "answer/bad-proof": "لم يُثبَت مفتاح هذا الجهاز: اطلب تحديًا آخر فورًا، ووقّعه لهذا المركز والنشاط والجهاز.",
  "answer/other-key":
    "اسم هذا الجهاز مرتبط بمفتاح آخر في هذا النشاط، ولا يجوز الاسم إلا لذلك المفتاح: انضم باسم جديد.",
  "answer/key-needed":
    "اسم هذا الجهاز مرتبط بمفتاح في هذا النشاط، ولم يُثبَت: انضم بذلك المفتاح، أو باسم جديد.",
  "answer/device-taken":
    "في النشاط جهاز بهذا الاسم بلا مفتاح، ويحتفظ باسمه ما دام فيه: انضم برمز الوصول الخاص به أو باسم جديد، أو اطلب من قائد إخراجه.",
  "answer/device-left":
    "كتب جهاز بهذا الاسم في هذا النشاط بلا مفتاح ثم خرج، فلا يستطيع أحد أن يعرف هل هذا هو نفسه: انضم برمز مالك المركز، أو باسم جديد.",
  "answer/device-elsewhere": "هذا الاسم لجهاز في مركز آخر مرتبط بهذا المركز: انضم هناك، أو باسم جديد.",
  "answer/too-many": "طلبات أكثر مما ينبغي: انتظر قليلًا.",
  "answer/too-many-tries":
    "جاء من هذه الشبكة عدد كبير من الرموز الخاطئة: حاول من جديد بعد ⁦{$seconds :integer} s⁩.",
  "answer/not-json": "المتن ليس JSON بترميز UTF-8.",
  "answer/bad-part": "«{$where}» ناقص أو خاطئ في المتن.",
  "answer/bad-body": "المتن ليس كائن JSON كما هو مطلوب.",
  "answer/store": "لا يمكن الكتابة في مخزن هذا المركز.",
  "answer/too-many-entries": "الحد الأقصى للقيود المرسلة دفعة واحدة {$most :integer}.",
  "answer/bad-cursor": "تُكتب العلامة بالشكل ⁦<epoch>:<offset>⁩، أو مع قيمة تحقق في آخرها.",
  "answer/send-one": "أرسل حدثًا واحدًا.",
  "answer/send-array": "أرسل مصفوفة أحداث بصيغة JSON.",
  "answer/not-found": "لا شيء عند هذا العنوان.",
  "answer/no-invitation": "لا توجد (أو لم تعد توجد) دعوة كهذه إلى هذا النشاط.",
  "answer/no-follower": "لا جهاز كهذا في هذا النشاط.",
};
