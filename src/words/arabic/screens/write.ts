import type { writeWords as english } from "../../english/screens/write.ts";
import type { Translated } from "../../translated.ts";

/** Why something cannot be done to a procedure that is being written. */
export const writeWords: Translated<typeof english> = {
  "write/no-procedure": "لن يكون للإجراء شكل تمكن قراءته.",
  "write/no-row": "اختر أولًا مهمة أو خطوة.",
  "write/nothing-chosen": "اختر أولًا خطوة.",
  "write/last-task": "يحتاج الإجراء إلى مهمة واحدة على الأقل.",
  "write/tasks-or-steps": "اختر إما مهام كاملة وإما خطوات مفردة من الجزء نفسه.",
  "write/beside-itself": "لا يمكن نقل الصفوف إلى جانب نفسها.",
  "write/at-the-end": "هو الأخير من قبل.",
  "write/at-the-beginning": "هو الأول من قبل.",
  "write/join-several": "اختر خطوتين أو أكثر لضمها.",
  "write/join-neighbours": "لا تُضم إلا خطوات متتالية في مهمة واحدة.",
  "write/join-people": "لا تُضم إلا خطوات ينفذها الأشخاص أنفسهم.",
  "write/join-conditions": "لا تُضم إلا خطوات بالشروط نفسها.",
  "write/join-places": "لا تُضم إلا خطوات في المكان نفسه، ولا انتقال إلا الأخيرة.",
  "write/join-one-only":
    "لأكثر من واحدة منها تأكيد أو قرار أو نقطة تثبيت أو نص إحاطة أو قيد على وقتها أو آخرون يمكنهم تنفيذها؛ أو تحتاج خطوة لاحقة إلى حالة. أزل ذلك أولًا.",
  "write/join-records": "لقياسين منها الاسم نفسه. غيّر اسم أحدهما أولًا.",
  "write/no-rows-in-text": "ليس في الملصق خطوات ولا مهام.",
  "write/nothing-wanted": "اكتب أولًا ما تبحث عنه.",
  "write/not-found": "«{$text}» ليس في أي نص من الصفوف.",
  "write/link-steps": "اختر خطوة، والخطوة التي يجب أن تسبقها.",
  "write/link-itself": "لا يمكن أن تأتي خطوة بعد نفسها.",
  "write/link-ring":
    "لا يمكن أن تأتي «{$step}» بعد «{$other}»: ستنتظر كل منهما الأخرى، ولا يستطيع أحد أن يستمر.",
  "write/way-places": "اختر مكانين من هذا الإجراء.",
  "write/way-to-itself": "يصل الطريق بين مكانين؛ اختر مكانًا آخر.",
  "write/way-there": "يصل طريق بين «{$one}» و«{$other}» من قبل.",
  "write/way-needs-length": "اذكر طول الطريق بالأمتار.",
  "write/nobody": "يجب أن ينفذ أحد الخطوة: أضف أولًا فردًا آخر من الطاقم.",
  "write/hand-over-itself": "يجب أن يكون المناوِل والمتناوِل شخصين.",
  "write/not-held": "لا يمسك {$crew} {$item} في تلك اللحظة من الخطة.",
};
