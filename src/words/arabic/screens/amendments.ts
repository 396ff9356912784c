import type { amendmentWords as english } from "../../english/screens/amendments.ts";
import type { Translated } from "../../translated.ts";

/** What is said of amendments of a running walk: why one has no effect, and what one does. */
export const amendmentWords: Translated<typeof english> = {
  "walk/amended": "عُدّلت الخطة",
  "walk/amended-because": "عُدّلت الخطة: {$reason}",
  "walk/step-dropped": "أزال تعديلٌ «{$step}» من الخطة",
  "amend/changes-nothing": "لا يغيّر شيئًا",
  "amend/unreadable": "تتعذّر قراءة تغييراته: {$why :message}",
  "amend/cannot-apply": "لا يمكن إجراء التغيير {$number :integer}: {$why :message}",
  "amend/unsound": "لا يمكن استخدام الإجراء معه: {$why :message}",
  "amend/begun-dropped": "بدأت «{$step}» أو اكتملت، فلا يمكن إزالتها من الخطة",
  "amend/entered-dropped":
    "تتحدث قيود في النشاط عن «{$step}»، فلا يمكن إزالتها من الخطة؛ يمكن تخطّيها مع ذكر السبب",
  "amend/begun-moved": "بدأت «{$step}» أو اكتملت، فلا يمكن نقلها",
  "amend/begun-changed": "بدأت «{$step}»، فتحتفظ بمنفذيها ومكانها وقرارها وما تنقله",
  "amend/complete-changed": "اكتملت «{$step}»، فلا يمكن تغييرها",
  "amend/before-begun": "ستسبق «{$step}» الخطوة «{$begun}» التي بدأت أو اكتملت، ضمن خطوات {$crew}",
  "amend/decision-gone": "اتُّخذ القرار «{$decision}»، ويجب أن يبقى كما هو",
  "amend/named-gone": "تذكر قيود في النشاط «{$id}»، فيجب أن يبقى في الإجراء",
  "amend/no-order": "لا ترتيب ممكنًا للخطوات المتبقية: {$why :message}",
  "amend/no-forecast": "لم يعد تخطيط بقية النشاط ممكنًا.",
  "amend/unfit": "لم تعد أي نافذة تتسع للخطوة «{$step}».",
  "amend/over-limit": "بالمدد المرجحة ينتهي النشاط بعد حده: الهامش {$margin :margin}.",
  "amend/no-home": "لم يعد تحديد طريق العودة ممكنًا.",
  "amend/past-redline": "{$crew}: يبلغ {$supply} حده الأحمر قبل إنجاز آخر خطوة؛ الهامش {$margin :margin}.",
  "amend/not-there": "لا يوجد هذا التعديل، أو هو بلا أثر",
  "amend/already-seen": "سبق أن سُجّل على هذا الجهاز الاطّلاع على التعديل",
};
