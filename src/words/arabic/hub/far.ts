import type { farHubWords as english } from "../../english/hub/far.ts";
import type { Translated } from "../../translated.ts";

/** What a hub says of another one that it is linked with. */
export const farHubWords: Translated<typeof english> = {
  "far/unknown-hub": "ما يجيب هناك ليس مركزًا يعرفه هذا المركز.",
  "far/connection-lost": "انقطع الاتصال بالمركز الآخر.",
  "far/answered": "أجاب المركز الآخر بالحالة {$status :integer}.",
  "far/not-reached": "لا يمكن الوصول إلى المركز عند {$origin} ({$why :message}).",
  "far/other-certificate": "يعرض شهادة غير المذكورة في ⁦--upstream⁩",
  "far/own-entry-unreadable": "لا تستطيع هذه النسخة قراءة قيد من هذا المركز: {$why :message}.",
  "far/no-relay": "الدعوة ليست لمركز: أنشئ دعوة بدور المُرحِّل (relay).",
  "far/itself": "ذلك هذا المركز نفسه: أعطِ عنوان مركز آخر.",
  "far/other-hub": "المركز الآخر عند {$origin}: {$what}",
  "far/entries-refused":
    ".input {$count :integer} .match $count zero {{رُفض {$count} قيد: {$why}}} one {{رُفض قيد واحد: {$why}}} two {{رُفض قيدان: {$why}}} few {{رُفض {$count} قيود: {$why}}} many {{رُفض {$count} قيدًا: {$why}}} * {{رُفض {$count} قيد: {$why}}}",
};
