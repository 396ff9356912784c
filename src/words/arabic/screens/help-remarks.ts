import type { helpOfRemarksWords as english } from "../../english/screens/help-remarks.ts";
import type { Translated } from "../../translated.ts";

/** What the help of reading says of remarks. */
export const helpOfRemarksWords: Translated<typeof english> = {
  "guide/remarks":
    "تُكتب في «الآراء» تعليقات وموافقات، على خطوة أو على الكل. وتقف التعليقات المفتوحة بين المآخذ إلى أن يحسمها أحد، في الإصدارات اللاحقة أيضًا.",
  "guide/remarks-agree":
    "الموافقة على نص واحد فقط، بكل بايتاته، ولا تعتمد شيئًا. احفظ الآراء في ملف لإعطائها لغيرك: تجتمع ملفات عدة قرّاء بأي ترتيب.",
};
