import type { takingInWords as english } from "../../english/screens/taking-in.ts";
import type { Translated } from "../../translated.ts";

/** What the shelf says of files that it is given. Its first screen says none of it. */
export const takingInWords: Translated<typeof english> = {
  "shelf/nothing-given": "取り込むものがありません。ファイルもテキストもありません。",
  "shelf/of-file": "{$file}：{$what}",
  "shelf/log-taken-in":
    "船外活動 {$walks :integer}件のエントリー {$added :integer}件を取り込みました（既知 {$known :integer}件）。",
  "shelf/conflicting": "{$count :integer}件を除外しました。発信元とidが同じ別のエントリーがあります。",
  "shelf/line-left-out": "{$line :integer}行目を除外しました：{$why}。",
  "shelf/more-lines-left-out": "ほかに{$count :integer}行を除外しました。",
  "shelf/extract-opened": "ログの抜粋です。表示するだけで、取り込みません。",
  "shelf/unknown-file": "手順書、船外活動のログ、このアプリのバックアップのいずれでもありません。",
  "shelf/backup-taken-in":
    "手順書 {$procedures :integer}件とエントリー {$entries :integer}件を取り込みました。残りはすでにありました。",
  "shelf/procedure-taken-in": "「{$title}」を棚に置きました。",
  "shelf/procedure-known": "「{$title}」はすでに棚にあります。",
  "shelf/procedure-refused": "手順書として使えません。",
  "shelf/finding-at-line": "{$line :integer}行目：{$finding :message}",
};
