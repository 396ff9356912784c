import type { learnWords as english } from "../../english/screens/learn.ts";
import type { Translated } from "../../translated.ts";

/** What is said of what walks tell of how long steps take. */
export const learnWords: Translated<typeof english> = {
  "learn/no-evidence": "لا يدل عليها أي نشاط: تبقى أرقام المخطِّط.",
  "learn/one-walk": "يدل عليها نشاط واحد، وهو أقل من أن تُقترح به أرقام أخرى.",
  "learn/hardly-moved": "تتغير المدة المرجحة بأقل من العُشر أو نصف دقيقة: تبقى أرقام المخطِّط.",
  "learn/disagree":
    "الخطة والشواهد مختلفة: الأنشطة تتفاوت أكثر كثيرًا مما خُطط. انظر في كل منها قبل تغيير الأرقام.",
  "learn/offered":
    ".input {$count :integer} .match $count zero {{لا نشاط يدل عليها.}} one {{نشاط واحد يدل عليها.}} two {{نشاطان يدلان عليها.}} few {{{$count} أنشطة تدل عليها.}} many {{{$count} نشاطًا يدل عليها.}} * {{{$count} نشاط يدل عليها.}}",
  "learn/offered-rehearsed":
    ".input {$count :integer} .match $count zero {{لا تمرين يدل عليها، ولا نشاط فعليًا.}} one {{تمرين واحد يدل عليها، ولا نشاط فعليًا.}} two {{تمرينان يدلان عليها، ولا نشاط فعليًا.}} few {{{$count} تمارين تدل عليها، ولا نشاط فعليًا.}} many {{{$count} تمرينًا يدل عليها، ولا نشاط فعليًا.}} * {{{$count} تمرين يدل عليها، ولا نشاط فعليًا.}}",
  "learn/title": "التعلّم من الأنشطة",
  "learn/what": "كم استغرقت الخطوات، بجانب ما خُطط",
  "learn/working": "جارٍ قراءة الأنشطة…",
  "learn/failed": "تعذّرت قراءة الأنشطة على هذا الجهاز. لم يُفقد شيء: ارجع وافتح هذه الصفحة من جديد.",
  "learn/no-walks":
    "لا نشاط بعد لهذا الإجراء على هذا الجهاز. تابعه أو أجرِ تمرينًا عليه، أو استورد سجلًا على الرف.",
  "learn/told-by": "على هذا الجهاز: الأنشطة الفعلية {$live :integer}، التمارين {$rehearsed :integer}",
  "learn/in-one-go":
    ".input {$count :integer} .match $count zero {{{$count} خطوة سُجّل إنجازها دفعة واحدة مع غيرها ولا تدل أي منها على شيء.}} one {{خطوة واحدة سُجّل إنجازها دفعة واحدة مع غيرها ولا تدل على شيء.}} two {{خطوتان سُجّل إنجازهما دفعة واحدة مع غيرهما ولا تدل أي منهما على شيء.}} few {{{$count} خطوات سُجّل إنجازها دفعة واحدة مع غيرها ولا تدل أي منها على شيء.}} many {{{$count} خطوة سُجّل إنجازها دفعة واحدة مع غيرها ولا تدل أي منها على شيء.}} * {{{$count} خطوة سُجّل إنجازها دفعة واحدة مع غيرها ولا تدل أي منها على شيء.}}",
  "learn/renamed": "خطوات تغيّر معرّفها",
  "learn/renamed-how":
    "الخطوة التي لها معرّف آخر في هذا الإصدار تبدأ من جديد، ما لم تذكر أي خطوة هي الآن. تُقترح خطوات الأشخاص أنفسهم، بالأغراض نفسها وإلى المكان نفسه.",
  "learn/renamed-is-now": "«{$action}» ({$id}) هي الآن",
  "learn/renamed-none": "ليست أيًا من هذه",
  "learn/renamed-step": "{$number} {$action}",
  "learn/renamed-said": "{$before} هي الآن {$now}.",
  "learn/renamed-take-back": "سحب",
  "learn/renamed-take-back-of": "سحب ما ذُكر أن {$before} هي الآن",
  "learn/unmatched":
    ".input {$count :integer} .match $count zero {{{$count} مدة لخطوات لم تعد موجودة، أو صارت عملًا آخر: {$steps :list}.}} one {{مدة واحدة لخطوة لم تعد موجودة، أو صارت عملًا آخر: {$steps :list}.}} two {{مدتان لخطوات لم تعد موجودة، أو صارت عملًا آخر: {$steps :list}.}} few {{{$count} مدد لخطوات لم تعد موجودة، أو صارت عملًا آخر: {$steps :list}.}} many {{{$count} مدة لخطوات لم تعد موجودة، أو صارت عملًا آخر: {$steps :list}.}} * {{{$count} مدة لخطوات لم تعد موجودة، أو صارت عملًا آخر: {$steps :list}.}}",
  "learn/which": "الخطوات المعروضة",
  "learn/shown-evidence": "خطوات لها أنشطة ({$count :integer})",
  "learn/shown-offered": "خطوات لها اقتراح ({$count :integer})",
  "learn/shown-all": "كل الخطوات ({$count :integer})",
  "learn/none-shown": "لا يوجد شيء منها.",
  "learn/steps": "الخطوات",
  "learn/planned":
    "المخطَّط: المرجحة {$likely :length form=second}، من {$low :length form=second} إلى {$high :length form=second}",
  "learn/expected":
    "المتوقع الآن: {$middle :length form=second}، وثمانية أنشطة من عشرة من {$from :length form=second} إلى {$to :length form=second}",
  "learn/weight": "وزن الأنشطة {$weight :number maximumFractionDigits=1}",
  "learn/weight-thin": "ضعيف: وزن الأنشطة {$weight :number maximumFractionDigits=1}",
  "learn/rehearsed-only": "من التمارين وحدها، وهي لا تبيّن سرعة النشاط الفعلي",
  "learn/take":
    "تخطيط: المرجحة {$likely :length form=second}، من {$low :length form=second} إلى {$high :length form=second}",
  "learn/walks":
    ".input {$count :integer} .match $count zero {{لا أنشطة}} one {{نشاط واحد}} two {{نشاطان}} few {{{$count} أنشطة}} many {{{$count} نشاطًا}} * {{{$count} نشاط}}",
  "learn/walk-took": "{$time :length form=second}، {$mode} في {$at :utc}",
  "learn/walk-broken-off": "قُطع بعد {$time :length form=second}، {$mode} في {$at :utc}",
  "learn/mode-live": "نشاط فعلي",
  "learn/mode-rehearsal": "تمرين",
  "learn/weighs": "وزنه {$weight :number maximumFractionDigits=2}",
  "learn/start-said": "البدء مُدخل",
  "learn/start-inferred": "البدء مستنتج",
  "learn/was-reopened": "أُعيد فتحها، والجزءان مجموعان",
  "learn/was-held": "مستثنى إيقاف مؤقت",
  "learn/far-off": "بعيد عن غيره، ووزنه أقل",
  "learn/legend-planned": "الخطة: ثمانية من عشرة",
  "learn/legend-found": "الخطة والأنشطة: ثمانية من عشرة",
  "learn/legend-quantiles": "ثمانية من عشرة من هذه الأنشطة",
  "learn/legend-live": "نشاط فعلي",
  "learn/legend-rehearsal": "تمرين",
  "learn/legend-broken-off": "مقطوع",
  "learn/legend-outlier": "بعيد عن غيره",
  "learn/legend-scale": "المدة المرجحة المخطَّطة؛ والخطان بجانبها نصفها وضعفها",
  "learn/no-learning":
    ".input {$walks :integer} .match $walks zero {{لا تمارين: لا يظهر تعلّم.}} one {{تمرين واحد: لا يظهر تعلّم.}} two {{تمرينان: لا يظهر تعلّم.}} few {{{$walks} تمارين: لا يظهر تعلّم.}} many {{{$walks} تمرينًا: لا يظهر تعلّم.}} * {{{$walks} تمرين: لا يظهر تعلّم.}}",
  "learn/learning-shorter":
    ".input {$walks :integer} .match $walks zero {{على مدى {$walks} تمرين قصرت الخطوات: بنسبة ⁦{$percent :integer} %⁩ مع كل مضاعفة للتكرار.}} one {{على مدى تمرين واحد قصرت الخطوات: بنسبة ⁦{$percent :integer} %⁩ مع كل مضاعفة للتكرار.}} two {{على مدى تمرينين قصرت الخطوات: بنسبة ⁦{$percent :integer} %⁩ مع كل مضاعفة للتكرار.}} few {{على مدى {$walks} تمارين قصرت الخطوات: بنسبة ⁦{$percent :integer} %⁩ مع كل مضاعفة للتكرار.}} many {{على مدى {$walks} تمرينًا قصرت الخطوات: بنسبة ⁦{$percent :integer} %⁩ مع كل مضاعفة للتكرار.}} * {{على مدى {$walks} تمرين قصرت الخطوات: بنسبة ⁦{$percent :integer} %⁩ مع كل مضاعفة للتكرار.}}",
  "learn/learning-longer":
    ".input {$walks :integer} .match $walks zero {{على مدى {$walks} تمرين طالت الخطوات: بنسبة ⁦{$percent :integer} %⁩ مع كل مضاعفة للتكرار.}} one {{على مدى تمرين واحد طالت الخطوات: بنسبة ⁦{$percent :integer} %⁩ مع كل مضاعفة للتكرار.}} two {{على مدى تمرينين طالت الخطوات: بنسبة ⁦{$percent :integer} %⁩ مع كل مضاعفة للتكرار.}} few {{على مدى {$walks} تمارين طالت الخطوات: بنسبة ⁦{$percent :integer} %⁩ مع كل مضاعفة للتكرار.}} many {{على مدى {$walks} تمرينًا طالت الخطوات: بنسبة ⁦{$percent :integer} %⁩ مع كل مضاعفة للتكرار.}} * {{على مدى {$walks} تمرين طالت الخطوات: بنسبة ⁦{$percent :integer} %⁩ مع كل مضاعفة للتكرار.}}",
  "learn/how":
    "لا يتغير شيء قبل الحفظ. ولك أن تأخذ كل اقتراح أو تتركه؛ والأنشطة لا تبيّن لماذا استغرقت خطوة ما استغرقته.",
  "learn/save":
    ".input {$count :integer} .match $count zero {{الحفظ بوصفه الإصدار {$revision}}} one {{حفظ مدة واحدة بوصفها الإصدار {$revision}}} two {{حفظ مدتين بوصفهما الإصدار {$revision}}} few {{حفظ {$count} مدد بوصفها الإصدار {$revision}}} many {{حفظ {$count} مدة بوصفها الإصدار {$revision}}} * {{حفظ {$count} مدة بوصفها الإصدار {$revision}}}",
  "learn/summary": "مدد {$steps :list} بعد الأنشطة {$walks :list}.",
  "learn/summary-behind": "{$summary} مدد {$steps :list} بعد الأنشطة {$walks :list}.",
};
