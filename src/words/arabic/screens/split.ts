import type { splitWords as english } from "../../english/screens/split.ts";
import type { Translated } from "../../translated.ts";

/** Who does what and in which order: the panel on the timeline of a plan, and `split` on the command line. */
export const splitWords: Translated<typeof english> = {
  "split/title": "أفضل توزيع",
  "split/rest": "أفضل توزيع لما بقي",
  "split/as-of": "كما كان النشاط عند PET {$now :clock}.",
  "split/moved-on": "سُجّل شيء منذ ذلك الحين. اسأل من جديد قبل أن تأخذ به.",
  "split/working": "جارٍ البحث عن توزيع أفضل…",
  "split/failed": "تعذّر هنا البحث عن توزيع أفضل. أغلق اللوحة واسأل من جديد.",
  "split/going-on": "ما زال البحث جاريًا: هذا أفضل ما وُجد حتى الآن.",
  "split/stop": "وقف البحث",
  "split/prove": "إثبات ذلك",
  "split/proving": "جارٍ البحث عن إثبات…",
  "split/no-solver":
    "يحتاج الإثبات إلى جزء من التطبيق ليس على هذا الجهاز بعد. اسأل من جديد مع وصلة إلى مصدر التطبيق.",
  "split/second-proven": "أُثبت مرة ثانية ببرنامج رياضي (الاختيارات بنعم أو لا: {$choices :integer}).",
  "split/second-open":
    "لم يحسم برنامج رياضي الأمر في البحث المسموح به (الاختيارات بنعم أو لا: {$choices :integer}).",
  "split/second-too-large": "أكبر من أن يُكتب برنامجًا رياضيًا (الاختيارات بنعم أو لا: {$choices :integer}).",
  "split/now": "الخطة كما هي: الانتهاء {$finish :finish}.",
  "split/proven":
    "الأفضل بإثبات: الانتهاء {$finish :finish}، متقدم {$by :advance}. لا توزيع لهذا العمل يكتمل قبل ذلك.",
  "split/best-found":
    "أفضل ما وُجد: الانتهاء {$finish :finish}، متقدم {$by :advance}. لا يمكن أن يكتمل أي توزيع قبل ذلك بأكثر من {$over :length}.",
  "split/kept-proven": "إبقاء الخطة: لا توزيع لهذا العمل يكتمل قبلها.",
  "split/kept": "إبقاء الخطة: لم يوجد أفضل منها. لا يمكن أن يكتمل أي توزيع قبلها بأكثر من {$over :length}.",
  "split/no-choice":
    "لا شيء للاختيار: لا خطوة تذكر من يمكن أن ينفذها غير منفذها (or)، ولا مهمة حرة الموضع (order).",
  "split/no-plan": "لا توجد خطة يمكن تحسينها: أصلح أولًا ما يمنع وضعها.",
  "split/step-given": "الخطوة {$step} «{$text}» ينفذها {$crew :list} بدلًا من {$old :list}.",
  "split/steps-given":
    "الخطوات {$steps :list} ينفذها {$crew :list} بدلًا من {$old :list}، كلها معًا، لأن شيئًا يبقى في يد واحدة من الأولى إلى الأخيرة.",
  "split/task-first": "المهمة «{$task}» تأتي أولًا.",
  "split/task-behind": "المهمة «{$task}» تأتي بعد «{$behind}».",
  "split/gains": "دون هذا التغيير تكتمل الخطة متأخرة {$time :advance}.",
  "split/needed": "لا يمكن إجراء التغييرات الأخرى دون هذا.",
  "split/chain":
    ".input {$count :integer} .match $count zero {{يتوقف انتهاء الخطة على سلسلة خطوات من {$first} إلى {$last} (عددها {$count})، ويُخفَّف عنها.}} one {{يتوقف انتهاء الخطة على الخطوة {$first}، ويُخفَّف عنها.}} two {{يتوقف انتهاء الخطة على خطوتين متتاليتين، {$first} و{$last}، ويُخفَّف عنهما.}} few {{يتوقف انتهاء الخطة على سلسلة من {$count} خطوات من {$first} إلى {$last}، ويُخفَّف عنها.}} many {{يتوقف انتهاء الخطة على سلسلة من {$count} خطوة من {$first} إلى {$last}، ويُخفَّف عنها.}} * {{يتوقف انتهاء الخطة على سلسلة من {$count} خطوة من {$first} إلى {$last}، ويُخفَّف عنها.}}",
  "split/cost": "ما يكلّفه",
  "split/changed-hands":
    ".input {$count :integer} .match $count zero {{لا خطوة يتغير منفذها.}} one {{خطوة واحدة يتغير منفذها.}} two {{خطوتان يتغير منفذهما.}} few {{{$count} خطوات يتغير منفذها.}} many {{{$count} خطوة يتغير منفذها.}} * {{{$count} خطوة يتغير منفذها.}}",
  "split/metres": "مجموع ما يقطعه الجميع {$after :metres} بدلًا من {$before :metres}.",
  "split/window-tighter": "في «{$window}» يبقى لأضيق خطوة {$after :advance} بدلًا من {$before :advance}.",
  "split/keep": "إبقاء الخطة",
  "split/save": "الحفظ بوصفه الإصدار {$revision}",
  "split/how-rest":
    "بالمدد المرجحة من ذلك الوقت، بلا مهام إضافية لم يبدأها أحد. ما اكتمل وما هو جارٍ يبقى، وكذلك الختام. ولا يتغير شيء إلى أن يسجل القائد تعديلًا.",
  "split/how":
    "بالمدد المرجحة، بلا مهام إضافية، والقرارات كما هو متوقع. لا يتغير إلا منفذو الخطوات التي تذكر من يمكن أن ينفذها غيرهم، ولا تُنقل إلا المهام الحرة الموضع؛ ويبقى الختام. ولا يتغير شيء إلى أن تحفظ إصدارًا.",
};
