import type { fragmentWords as english } from "../../english/screens/fragments.ts";
import type { Translated } from "../../translated.ts";

/** Steps that are used again: what is wrong with a fragment, and the panel that puts one in. */
export const fragmentWords: Translated<typeof english> = {
  "fragment/not-json": "JSONではありません。",
  "fragment/newer": "プログラムの新しい版のものです。",
  "fragment/unusable": "使える「{$key}」がありません。",
  "fragment/blank-doubled": "空欄「{$blank}」が2つあります。",
  "fragment/no-such-blank": "空欄「{$blank}」はありません。",
  "fragment/time-in-text": "空欄「{$blank}」は時間で、本文の中には置けません。",
  "fragment/blank-empty": "「{$label}」が入力されていません。",
  "fragment/blank-not-there": "「{$label}」に入力されたものは、この手順書にありません。",
  "fragment/no-such-place": "挿入先がこの手順書にありません。",
  "fragment/steps-or-tasks": "ステップとタスクのどちらか一方だけを含められます。",
  "fragment/tasks-go-behind-task": "タスクからなる定型手順は、タスクの後に挿入します。",
  "fragments/title": "定型手順",
  "fragments/how":
    "定型手順は、繰り返し使う数個のステップまたはタスクです。空欄を埋め、挿入先を指定し、結果を確認してください。指示するまで挿入されません。",
  "fragments/which": "定型手順",
  "fragments/name": "{$title}、改訂 {$revision}",
  "fragments/from-file": "ファイルから…",
  "fragments/cannot-be-read": "「{$name}」は定型手順として読み取れません：",
  "fragments/choose": "－ 選択してください －",
  "fragments/minutes": "{$label}（分）",
  "fragments/goes": "挿入先",
  "fragments/behind-step": "{$number} {$action}の後",
  "fragments/behind-task": "「{$task}」の後に独立したタスクとして",
  "fragments/tasks-behind-task": "「{$task}」の後にそのタスクごと",
  "fragments/put-in": "挿入",
  "fragments/about": "{$fragment}を挿入",
  "fragments/offers": "挿入済みで、別の改訂版がある定型手順",
  "fragments/offer": "{$fragment}：改訂 {$revision}が{$use}として挿入されています。改訂 {$newer}があります。",
  "fragments/blind":
    "挿入された改訂版は、ここにはありません。この変更を採用すると、挿入後にこれらのステップに加えた変更は失われます。",
  "fragments/nothing-new": "改訂のほかに変わるものはありません。",
  "fragments/conflicts": "定型手順とこの手順書の両方が同じ箇所を変えています。自動では選びません：",
  "fragments/take": "変更を採用",
  "fragments/take-which": "{$use}の{$fragment}の変更を採用",
  "fragments/taken": "{$fragment}を改訂 {$revision}に更新",
};
