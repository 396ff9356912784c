import type { takingInWords as english } from "../../english/screens/taking-in.ts";
import type { Translated } from "../../translated.ts";

/** What the shelf says of files that it is given. Its first screen says none of it. */
export const takingInWords: Translated<typeof english> = {
  "shelf/nothing-given": "لا شيء للاستيراد: لا ملف ولا نص.",
  "shelf/of-file": "{$file}: {$what}",
  "shelf/log-taken-in":
    "قيود مستوردة: {$added :integer}، معروفة من قبل: {$known :integer}، عدد الأنشطة: {$walks :integer}.",
  "shelf/conflicting":
    ".input {$count :integer} .match $count zero {{استُبعد {$count} قيد: لقيود أخرى المصدر والمعرّف نفساهما.}} one {{استُبعد قيد واحد: لقيود أخرى المصدر والمعرّف نفساهما.}} two {{استُبعد قيدان: لقيود أخرى المصدر والمعرّف نفساهما.}} few {{استُبعد {$count} قيود: لقيود أخرى المصدر والمعرّف نفساهما.}} many {{استُبعد {$count} قيدًا: لقيود أخرى المصدر والمعرّف نفساهما.}} * {{استُبعد {$count} قيد: لقيود أخرى المصدر والمعرّف نفساهما.}}",
  "shelf/line-left-out": "استُبعد السطر {$line :integer}: {$why}.",
  "shelf/more-lines-left-out":
    ".input {$count :integer} .match $count zero {{استُبعد أيضًا {$count} سطر.}} one {{استُبعد أيضًا سطر واحد.}} two {{استُبعد أيضًا سطران.}} few {{استُبعد أيضًا {$count} أسطر.}} many {{استُبعد أيضًا {$count} سطرًا.}} * {{استُبعد أيضًا {$count} سطر.}}",
  "shelf/extract-opened": "هذا مستخرج من سجل: يُعرض ولا يؤخذ منه شيء.",
  "shelf/unknown-file": "ليس هذا إجراءً، ولا سجل نشاط، ولا نسخة احتياطية من هذا التطبيق.",
  "shelf/backup-taken-in":
    "إجراءات مستوردة: {$procedures :integer}، قيود مستوردة: {$entries :integer}؛ والباقي كان موجودًا هنا.",
  "shelf/procedure-taken-in": "«{$title}» على الرف.",
  "shelf/procedure-known": "كان «{$title}» على الرف من قبل.",
  "shelf/procedure-refused": "لا يصلح إجراءً.",
  "shelf/finding-at-line": "السطر {$line :integer}: {$finding :message}",
};
