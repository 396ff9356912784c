import type { surpriseSentences as english } from "../../english/command-line/surprises.ts";
import type { Translated } from "../../translated.ts";

/** Surprises of rehearsals on the command line. */
export const surpriseSentences: Translated<typeof english> = {
  "cli/surprises-laid":
    ".input {$count :integer} .match $count zero {{بُرمجت {$count} مفاجأة من أصل {$of :integer}؛ وتذكر ذلك مراجعة النشاط.}} one {{بُرمجت مفاجأة واحدة من أصل {$of :integer}؛ وتذكر ذلك مراجعة النشاط.}} two {{بُرمجت مفاجأتان من أصل {$of :integer}؛ وتذكر ذلك مراجعة النشاط.}} few {{بُرمجت {$count} مفاجآت من أصل {$of :integer}؛ وتذكر ذلك مراجعة النشاط.}} many {{بُرمجت {$count} مفاجأة من أصل {$of :integer}؛ وتذكر ذلك مراجعة النشاط.}} * {{بُرمجت {$count} مفاجأة من أصل {$of :integer}؛ وتذكر ذلك مراجعة النشاط.}}",
  "cli/surprises": "المفاجآت",
  "cli/surprise-came": "{$at :clock} {$title}: {$effect}",
  "cli/surprise-never": "لم تأتِ قط: {$title}: {$effect}",
  "cli/surprise-expected": "المتوقع من {$crew :list} خلال {$time :length}: {$notice} {$act}",
  "cli/surprise-unnoticed": "لا قيد يدل على أنها لوحظت.",
  "cli/surprise-sign": "{$at :clock} {$who}: {$what}",
  "cli/surprise-sign-said": "{$at :clock} {$who}: {$what}؛ {$said}",
  "cli/surprise-cost":
    ".input {$way :string} .match $way earlier {{كان الانتهاء المتوقع بعدها متقدمًا {$time :length form=second}.}} * {{كان الانتهاء المتوقع بعدها متأخرًا {$time :length form=second}.}}",
  "cli/surprise-margin": "تغيّر الهامش من {$before :margin} إلى {$after :margin}.",
  "cli/surprise-supply":
    "تغيّر المتبقي في النهاية من {$supply} لدى {$crew} من {$before :quantity} إلى {$after :quantity}.",
  "cli/surprises-alone": "في {$file} مفاجآت: اذكر بجانبه ملف الإجراء «{$procedure}» أيضًا.",
};
