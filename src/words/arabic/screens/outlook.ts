import type { outlookWords as english } from "../../english/screens/outlook.ts";
import type { Translated } from "../../translated.ts";

/** By when a walk is over, as so many samples of ten say, and what samples miss or break. */
export const outlookWords: Translated<typeof english> = {
  "outlook/half": "النصف بحلول {$finish :finish}",
  "outlook/half-margin": "النصف بحلول {$finish :finish}، الهامش {$margin :margin}",
  "outlook/half-over": "النصف بحلول {$finish :finish}، بتجاوز قدره {$margin :length}",
  "outlook/half-none": "أقل من نصف العينات ضمن نوافذها",
  "outlook/nine-in-ten": "تسعة أعشار بحلول {$finish :finish}",
  "outlook/nine-in-ten-margin": "تسعة أعشار بحلول {$finish :finish}، الهامش {$margin :margin}",
  "outlook/nine-in-ten-over": "تسعة أعشار بحلول {$finish :finish}، بتجاوز قدره {$margin :length}",
  "outlook/nine-in-ten-none": "أقل من تسعة أعشار العينات ضمن نوافذها",
  "risk/title": "ما تفوّته العينات",
  "risk/how": "تُسحب المدد من توزيعات PERT-beta؛ والنسب من عينات عددها {$samples :integer}.",
  "risk/unfit":
    "في {$share :chance of=harm} من العينات تفوّت خطوة نوافذها: {$windows :list}، عند {$steps :list}",
  "risk/of": "{$name} {$share :chance of=harm}",
  "risk/done-late": "تُنجز {$step} بعد {$by :pet} في {$share :chance of=harm} من العينات",
  "risk/started-late":
    "تبدأ {$step} بعد أكثر من {$within :margin} من {$after} في {$share :chance of=harm} من العينات",
};
