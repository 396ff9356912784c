import type { remarkWords as english } from "../../english/screens/remarks.ts";
import type { Translated } from "../../translated.ts";

/** What readers of a procedure remark, and the panel in which they do. */
export const remarkWords: Translated<typeof english> = {
  "remarks/no-json": "ليس رأيًا.",
  "remarks/newer": "من نسخة أحدث من البرنامج.",
  "remarks/unusable": "لا توجد فيه قيمة صالحة للمفتاح «{$key}».",
  "remarks/says-nothing": "تعليق لا يقول شيئًا.",
  "remarks/names-nothing": "يردّ على رأي ولا يذكر أيّ رأي.",
  "remarks/too-many": "عدد الآراء أكثر من {$most :integer}. واستُبعد الباقي.",
  "remarks/open": "{$name} ({$role}): {$says}",
  "remarks/open-before": "{$name} ({$role})، عن الإصدار {$revision}: {$says}",
  "remarks/open-of-gone-step": "{$name} ({$role})، عن الخطوة «{$step}» التي لم تعد موجودة: {$says}",
  "remarks/title": "الآراء",
  "remarks/button":
    ".input {$count :integer} .match $count zero {{الآراء}} one {{الآراء (المفتوح: {$count})}} two {{الآراء (المفتوح: {$count})}} few {{الآراء (المفتوح: {$count})}} many {{الآراء (المفتوح: {$count})}} * {{الآراء (المفتوح: {$count})}}",
  "remarks/advises":
    "الرأي لا يعتمد شيئًا. ما إذا كان يجوز تنفيذ هذا الإجراء تقرره إجراءات مؤسستك، لا هذه الصفحة.",
  "remarks/who": "اسمك",
  "remarks/role": "الصفة التي تتكلم بها",
  "remarks/needs-who": "اذكر أولًا من أنت وبأي صفة تتكلم.",
  "remarks/about": "عن",
  "remarks/whole": "الإصدار كله",
  "remarks/step": "{$number} {$action}",
  "remarks/gone-step": "الخطوة «{$step}» التي لم تعد موجودة",
  "remarks/comment": "تعليق",
  "remarks/add": "إضافة التعليق",
  "remarks/agree": "الموافقة على هذا النص",
  "remarks/agree-how":
    "تسري الموافقة على هذا النص وحده. ومع أي تغيير في الملف لا تعود سارية، وتذكر هذه الصفحة ذلك.",
  "remarks/no-digest":
    "لا تمكن الموافقة هنا: لا تُقدَّم هذه الصفحة عبر اتصال آمن، فلا يمكن تمييز النص من غيره. ويمكن كتابة التعليقات.",
  "remarks/agreed": "من وافق",
  "remarks/nobody": "لم يوافق أحد على هذا النص.",
  "remarks/agreement": "وافق {$name} ({$role}) على {$what}",
  "remarks/holds": "تسري على هذا النص",
  "remarks/holds-not": "كانت على نص آخر (الإصدار {$revision}) ولا تسري على هذا النص",
  "remarks/withdraw": "سحب",
  "remarks/withdraw-whose": "سحب موافقة {$name} على {$what}",
  "remarks/open-comments": "التعليقات المفتوحة",
  "remarks/no-open": "لا تعليق مفتوح.",
  "remarks/resolved-comments": "التعليقات المحسومة",
  "remarks/of-revision": "{$at :utc} UTC، الإصدار {$revision}",
  "remarks/resolve": "حسم",
  "remarks/resolve-whose": "حسم: {$says}",
  "remarks/reopen": "إعادة فتح",
  "remarks/reopen-whose": "إعادة فتح: {$says}",
  "remarks/resolved-by": "حسمه {$names :list}",
  "remarks/idle":
    ".input {$count :integer} .match $count zero {{{$count} رأي بلا أثر: تذكر ما ليس هنا، أو تسحب ما لشخص آخر.}} one {{رأي واحد بلا أثر: يذكر ما ليس هنا، أو يسحب ما لشخص آخر.}} two {{رأيان بلا أثر: يذكران ما ليس هنا، أو يسحبان ما لشخص آخر.}} few {{{$count} آراء بلا أثر: تذكر ما ليس هنا، أو تسحب ما لشخص آخر.}} many {{{$count} رأيًا بلا أثر: تذكر ما ليس هنا، أو تسحب ما لشخص آخر.}} * {{{$count} رأي بلا أثر: تذكر ما ليس هنا، أو تسحب ما لشخص آخر.}}",
  "remarks/conflicting":
    ".input {$count :integer} .match $count zero {{{$count} رأي متماثلة المعرّفات مختلفة: لا يُحتسب أي منها.}} one {{رأي واحد معرّفه معرّف رأي آخر، فلا يُحتسب.}} two {{رأيان معرّفهما واحد ويختلفان: لا يُحتسب أي منهما.}} few {{{$count} آراء متماثلة المعرّفات مختلفة: لا يُحتسب أي منها.}} many {{{$count} رأيًا متماثلة المعرّفات مختلفة: لا يُحتسب أي منها.}} * {{{$count} رأي متماثلة المعرّفات مختلفة: لا يُحتسب أي منها.}}",
  "remarks/export": "الحفظ في ملف",
  "remarks/import": "استيراد ملف",
  "remarks/taken-in":
    "آراء مستوردة: {$added :integer}، موجودة من قبل: {$known :integer}. كل رأي يقف بجانب إجرائه.",
  "remarks/line": "السطر {$line :integer}: {$why :message}",
  "remarks/not-kept": "تعذّر حفظ الرأي على هذا الجهاز: {$why :message}",
};
