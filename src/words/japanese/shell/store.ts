import type { storeWords as english } from "../../english/shell/store.ts";
import type { Translated } from "../../translated.ts";

/** What is wrong with the storage of a device, and with a file that was given to the app. */
export const storeWords: Translated<typeof english> = {
  "store/missing": "このブラウザーには、アプリ用の保存領域がありません。",
  "store/denied":
    "このブラウザーはアプリの保存を許可していません。プライベートウィンドウの可能性があります。",
  "store/full": "この端末の保存領域がいっぱいです。",
  "store/blocked": "この端末の保存領域が応答しませんでした。別のタブが使用している可能性があります。",
  "store/newer": "保存領域は、このアプリの新しい版で作られています。アプリを更新してください。",
  "store/lost": "このアプリの保存領域は、ブラウザーによって閉じられたか消去されました。",
  "store/failed": "この端末の保存領域でエラーが起きました。",
  "store/in-memory":
    "{$trouble :message}船外活動はメモリー上でのみ続いています。このページを閉じる前に書き出してください。",
  "given/pasted": "貼り付けたテキスト",
  "given/too-large": "ファイルが{$most :number} MiBを超えています。",
  "given/unreadable": "ファイルを読み取れません。フォルダーであるか、移動された可能性があります。",
  "given/not-text": "ファイルがUTF-8のテキストではありません。",
};
