import type { storeWords as english } from "../../english/shell/store.ts";
import type { Translated } from "../../translated.ts";

/** What is wrong with the storage of a device, and with a file that was given to the app. */
export const storeWords: Translated<typeof english> = {
  "store/missing": "لا يوفر هذا المتصفح تخزينًا للتطبيقات.",
  "store/denied": "لا يسمح هذا المتصفح للتطبيق بالتخزين؛ ربما كانت هذه نافذة تصفح خاص.",
  "store/full": "امتلأت مساحة التخزين على هذا الجهاز.",
  "store/blocked": "لم تستجب ذاكرة التخزين على هذا الجهاز؛ ربما تشغلها علامة تبويب أخرى.",
  "store/newer": "أُنشئ التخزين بنسخة أحدث من هذا التطبيق؛ حدّث التطبيق.",
  "store/lost": "أغلق المتصفح تخزين هذا التطبيق أو محاه.",
  "store/failed": "أبلغ تخزين هذا الجهاز عن خطأ.",
  "store/in-memory": "{$trouble :message} يستمر النشاط في الذاكرة فقط: صدّره قبل إغلاق هذه الصفحة.",
  "given/pasted": "نص ملصق",
  "given/too-large": "الملف أكبر من ⁦{$most :number} MiB⁩.",
  "given/unreadable": "تتعذّر قراءة الملف؛ ربما كان مجلدًا، أو نُقل.",
  "given/not-text": "الملف ليس نصًا بترميز UTF-8.",
};
