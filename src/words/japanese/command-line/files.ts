import type { filesWords as english } from "../../english/command-line/files.ts";
import type { Translated } from "../../translated.ts";

/** Why a file on a machine cannot be read or written. */
export const filesWords: Translated<typeof english> = {
  "file/standard-input": "標準入力",
  "file/not-read": "「{$file :message}」を読み取れません：{$why :message}。",
  "file/not-written": "「{$file :message}」に書き込めません：{$why :message}。",
  "file/not-there": "ファイルがありません",
  "file/is-directory": "ファイルではなくディレクトリです",
  "file/not-this-user": "このユーザーには開く権限がありません",
  "file/read-only": "ディスクが読み取り専用です",
  "file/disk-full": "ディスクがいっぱいです",
  "file/system-reports": "システムの報告 {$code}",
  "file/system-error": "システムがエラーを報告しました",
  "file/not-utf-8": "UTF-8のテキストではありません",
  "file/larger-than-mebibytes": "{$most :number} MiBを超えています",
  "file/larger-than-bytes": "{$most :integer}バイトを超えています",
  "cli/no-texts":
    "手順書に「{$tag}」の文はありません。使えるのは{$languages :list}、原文なら「author」です。",
  "cli/no-texts-but-author": "手順書に「{$tag}」の文はなく、あるのは原文だけです。",
};
