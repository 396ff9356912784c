import type { fragmentWords as english } from "../../english/screens/fragments.ts";
import type { Translated } from "../../translated.ts";

/** Steps that are used again: what is wrong with a fragment, and the panel that puts one in. */
export const fragmentWords: Translated<typeof english> = {
  "fragment/not-json": "ليس JSON.",
  "fragment/newer": "من نسخة أحدث من البرنامج.",
  "fragment/unusable": "لا توجد قيمة صالحة للمفتاح «{$key}».",
  "fragment/blank-doubled": "خانتان باسم «{$blank}».",
  "fragment/no-such-blank": "لا توجد الخانة «{$blank}».",
  "fragment/time-in-text": "الخانة «{$blank}» مدة، ولا يمكن أن ترد داخل نص.",
  "fragment/blank-empty": "ما زالت «{$label}» فارغة.",
  "fragment/blank-not-there": "ما مُلئت به «{$label}» غير موجود في هذا الإجراء.",
  "fragment/no-such-place": "الموضع المراد وضعه فيه غير موجود في هذا الإجراء.",
  "fragment/steps-or-tasks": "يحتوي إما على خطوات وإما على مهام.",
  "fragment/tasks-go-behind-task": "يوضع المقطع المؤلف من مهام بعد مهمة.",
  "fragments/title": "المقاطع",
  "fragments/how":
    "المقطع بضع خطوات أو مهام يُعاد استخدامها. املأ خاناته، وبيّن موضعه، وانظر إلى الناتج: لا يُدرج شيء قبل أن تطلب ذلك.",
  "fragments/which": "المقطع",
  "fragments/name": "{$title}، الإصدار {$revision}",
  "fragments/from-file": "من ملف…",
  "fragments/cannot-be-read": "تتعذّر قراءة «{$name}» مقطعًا:",
  "fragments/choose": "– اختر واحدًا –",
  "fragments/minutes": "{$label}، بالدقائق",
  "fragments/goes": "موضعه",
  "fragments/behind-step": "بعد {$number} {$action}",
  "fragments/behind-task": "مهمة مستقلة بعد «{$task}»",
  "fragments/tasks-behind-task": "بمهامه بعد «{$task}»",
  "fragments/put-in": "إدراجه",
  "fragments/about": "إدراج {$fragment}",
  "fragments/offers": "مقاطع مُدرجة لها إصدار آخر",
  "fragments/offer": "{$fragment}: أُدرج الإصدار {$revision} باسم {$use}؛ والموجود هنا الإصدار {$newer}.",
  "fragments/blind":
    "الإصدار المُدرج غير معروف هنا. أخذ هذه التغييرات يلغي ما تغيّر في هذه الخطوات بعد الإدراج.",
  "fragments/nothing-new": "لا يتغير شيء سوى رقم الإصدار.",
  "fragments/conflicts": "غيّر المقطع وهذا الإجراء الشيء نفسه؛ ولا يُختار شيء:",
  "fragments/take": "أخذ هذه التغييرات",
  "fragments/take-which": "أخذ تغييرات {$fragment} في {$use}",
  "fragments/taken": "{$fragment} بحسب الإصدار {$revision}",
};
