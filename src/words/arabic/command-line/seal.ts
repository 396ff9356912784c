import type { sealSentences as english } from "../../english/command-line/seal.ts";
import type { Translated } from "../../translated.ts";

/** What `verify` and `extract` print. */
export const sealSentences: Translated<typeof english> = {
  "cli/verify-not-read": "{$file}، السطر {$line :integer}: لم يُقرأ: {$why}.",
  "cli/verify-no-key": "«{$key}» ليس مفتاح مركز: 43 حرفًا، كما تعرضه شاشة بدء تشغيله.",
  "cli/verify-no-code": "«{$code}» ليس رمزًا: اثنا عشر حرفًا في مجموعات من ثلاثة.",
  "cli/verify-source": "المصدر",
  "cli/verify-by": "قُبل بوصفه",
  "cli/verify-admitted": "{$name}، {$role}",
  "cli/verify-verdict": "الحكم",
  "cli/verify-entries": "القيود",
  "cli/verify-sealed": "المختوم",
  "cli/verify-behind": "بعدها",
  "cli/verify-finding": "{$source}: {$what}.",
  "cli/verify-finding-at": "{$source}، الرقم {$number :integer}: {$what}.",
  "cli/verify-checkpoint": "نقطة التحقق {$code}، القيود {$entries :integer}، من {$by} ({$trust}): {$state}.",
  "cli/verify-code":
    "كل القيود هنا، وعددها {$entries :integer}: الرمز {$code}، الجذر {$root}، الترتيب {$order}.",
  "cli/verify-spelled": "القراءة بصوت مسموع: {$spelled}.",
  "cli/verify-hub": "مفتاح {$source} هو {$key}.",
  "cli/verify-extract-checkpoint": "نقطة التحقق من {$by} ({$trust}): الرمز {$code}، الجذر {$root}.",
  "cli/extract-nothing": "لم يُختر قيد من {$file}: لم يُكتب شيء.",
  "cli/extract-choose": "اذكر ما يؤخذ بالخيار ⁦--step⁩ أو ⁦--kind⁩: مستخرج كل شيء هو السجل نفسه.",
  "cli/extract-no-checkpoint": "ليس في {$file} نقطة تحقق لمركز تطابقه: لا شيء يُثبت به مستخرج.",
  "cli/extract-behind":
    ".input {$count :integer} .match $count zero {{{$count} قيد من المختارة لم تتضمنها نقطة تحقق: لم يُكتب شيء. خذ السجل من جديد بعد أن يضع المركز نقطة تحقق أخرى.}} one {{قيد واحد من المختارة لم تتضمنه نقطة تحقق: لم يُكتب شيء. خذ السجل من جديد بعد أن يضع المركز نقطة تحقق أخرى.}} two {{قيدان من المختارة لم تتضمنهما نقطة تحقق: لم يُكتب شيء. خذ السجل من جديد بعد أن يضع المركز نقطة تحقق أخرى.}} few {{{$count} قيود من المختارة لم تتضمنها نقطة تحقق: لم يُكتب شيء. خذ السجل من جديد بعد أن يضع المركز نقطة تحقق أخرى.}} many {{{$count} قيدًا من المختارة لم تتضمنها نقطة تحقق: لم يُكتب شيء. خذ السجل من جديد بعد أن يضع المركز نقطة تحقق أخرى.}} * {{{$count} قيد من المختارة لم تتضمنها نقطة تحقق: لم يُكتب شيء. خذ السجل من جديد بعد أن يضع المركز نقطة تحقق أخرى.}}",
  "cli/extract-made": "{$file}: القيود الكاملة {$chosen :integer}، والمستبعدة {$left :integer}.",
  "cli/verify-same": "الرمز الذي أعطيته هو نفسه: عدد قيوده {$entries :integer}.",
  "cli/verify-differs":
    "الرمز الذي أعطيته ليس لهذا السجل: يختلف في المجموعة {$groups :list}. سُمع خطأً، أو هناك قيود أخرى.",
};
