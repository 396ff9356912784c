import type { filesWords as english } from "../../english/command-line/files.ts";
import type { Translated } from "../../translated.ts";

/** Why a file on a machine cannot be read or written. */
export const filesWords: Translated<typeof english> = {
  "file/standard-input": "الدخل القياسي",
  "file/not-read": "لا تمكن قراءة «{$file :message}»: {$why :message}.",
  "file/not-written": "لا تمكن كتابة «{$file :message}»: {$why :message}.",
  "file/not-there": "لا يوجد ملف كهذا",
  "file/is-directory": "هو دليل وليس ملفًا",
  "file/not-this-user": "لا يجوز لهذا المستخدم فتحه",
  "file/read-only": "القرص للقراءة فقط",
  "file/disk-full": "القرص ممتلئ",
  "file/system-reports": "أبلغ النظام عن {$code}",
  "file/system-error": "أبلغ النظام عن خطأ",
  "file/not-utf-8": "ليس نصًا بترميز UTF-8",
  "file/larger-than-mebibytes": "هو أكبر من ⁦{$most :number} MiB⁩",
  "file/larger-than-bytes": "حجمه بالبايت أكبر من {$most :integer}",
  "cli/no-texts": "لا نصوص للإجراء باللغة «{$tag}». الموجود: {$languages :list}، و«author» للنصوص كما كُتبت.",
  "cli/no-texts-but-author": "لا نصوص للإجراء باللغة «{$tag}»، وليس فيه إلا نصوص المؤلف.",
};
