import type { findingsOfPlanWords as english } from "../../english/screens/findings-plan.ts";
import type { Translated } from "../../translated.ts";

/** What there is to say of a plan in its windows, its light and its limit. */
export const findingsOfPlanWords: Translated<typeof english> = {
  "time/over-limit": "تتجاوز الخطة حد المدة بمقدار ⁦{$over :integer} min⁩.",
  "light/decayed": "بحسب مجموعة عناصره المدارية يضمحل المدار خلال يوم من البداية.",
  "window/not-known-start": "لا يُعرف موعد {$window} دون لحظة PET 0؛ والخطة لا تأخذها في الحسبان.",
  "window/not-known-orbit": "لا يُعرف موعد {$window} دون مدار ولحظة بداية؛ والخطة لا تأخذها في الحسبان.",
  "window/no-fit":
    "تستغرق «{$step}» ⁦{$length :number} min⁩ ويمكن أن تبدأ في أقرب وقت عند PET {$ready :clock}. {$why :message} {$mend :message}",
  "window/not-open-after":
    ".input {$count :integer} {{بعد ذلك لا يوجد وقت مفتوح في {$windows :list style=chained}.}}",
  "window/too-short":
    ".input {$count :integer} {{أطول وقت مفتوح بعد ذلك في {$windows :list style=chained} هو ⁦{$longest :number} min⁩، أقصر من اللازم بمقدار ⁦{$short :number} min⁩.}}",
  "window/call-out-of-contact":
    'تخاطب «{$step}» الأرض من PET {$start :clock} إلى {$finish :clock}، خارج {$windows :list style=chained}. اذكر نافذة اتصال في "within" كي تنتظرها المخاطبة، أو انقل المخاطبة.',
  "window/fits-earlier":
    "تتسع لها النافذة إذا أمكن أن تبدأ أبكر بمقدار ⁦{$earlier :number} min⁩، في موعد أقصاه PET {$at :clock}.",
  "window/fits-shorter": "تتسع لها النافذة إذا نقصت مدتها بمقدار ⁦{$less :number} min⁩.",
  "window/fits-earlier-or-shorter":
    "تتسع لها النافذة إذا أمكن أن تبدأ أبكر بمقدار ⁦{$earlier :number} min⁩، في موعد أقصاه PET {$at :clock}، أو إذا نقصت مدتها بمقدار ⁦{$less :number} min⁩.",
  "window/fits-never": "ليست أي فترة من {$windows :list style=chained} طويلة بما يكفي.",
  "time/done-late":
    "يجب إنجاز «{$step}» في موعد أقصاه PET {$by :clock}، وهي في الخطة تُنجز عند {$at :finish form=second}: متأخرة بمقدار {$over :length}.",
  "time/done-late-bound":
    "يجب إنجاز «{$step}» في موعد أقصاه PET {$by :clock}، وهي في الخطة تُنجز عند {$at :finish form=second}: متأخرة بمقدار {$over :length}. آخر ما يتيح بدءها هو {$crew :list} في «{$other}».",
  "time/started-late":
    "يجب أن تبدأ «{$step}» خلال {$within :length} بعد «{$after}»، وهي في الخطة تبدأ متأخرة بمقدار {$over :length}.",
  "time/started-late-bound":
    "يجب أن تبدأ «{$step}» خلال {$within :length} بعد «{$after}»، وهي في الخطة تبدأ متأخرة بمقدار {$over :length}. آخر ما يتيح بدءها هو {$crew :list} في «{$other}».",
  "place/too-far-apart":
    "يبعد {$one} عن {$other} مسافة {$metres :metres} عبر الطرق عند نهاية «{$step}»، PET {$at :clock}: بزيادة {$over :metres round=up} على المسموح به وهو {$apart :metres}.",
};
