import type { writeWords as english } from "../../english/screens/write.ts";
import type { Translated } from "../../translated.ts";

/** Why something cannot be done to a procedure that is being written. */
export const writeWords: Translated<typeof english> = {
  "write/no-procedure": "手順書として読み取れる形でなくなります。",
  "write/no-row": "まずタスクかステップを選んでください。",
  "write/nothing-chosen": "まずステップを選んでください。",
  "write/last-task": "手順書には少なくとも1つのタスクが必要です。",
  "write/tasks-or-steps": "タスク全体か、同じ部分の個々のステップか、どちらかだけを選んでください。",
  "write/beside-itself": "行をそれ自身の隣に移すことはできません。",
  "write/at-the-end": "すでに末尾です。",
  "write/at-the-beginning": "すでに先頭です。",
  "write/join-several": "結合するには、2つ以上のステップを選んでください。",
  "write/join-neighbours": "結合できるのは、1つのタスクの中で連続するステップだけです。",
  "write/join-people": "結合できるのは、担当が同じステップだけです。",
  "write/join-conditions": "結合できるのは、条件が同じステップだけです。",
  "write/join-places": "結合できるのは、場所が同じステップだけです。移動は最後の1つだけに限ります。",
  "write/join-one-only":
    "確認、判断、固定点、ブリーフィング用の記載、時刻の制約、ほかの担当候補のいずれかが2つ以上のステップにあるか、後のステップに必要な状態があります。先にそれを外してください。",
  "write/join-records": "2つの記録値の名前が同じです。先にどちらかの名前を変えてください。",
  "write/no-rows-in-text": "貼り付けたテキストに、ステップもタスクもありません。",
  "write/nothing-wanted": "まず検索する文字を入力してください。",
  "write/not-found": "「{$text}」はどの行の本文にもありません。",
  "write/link-steps": "ステップと、その先に来るステップを選んでください。",
  "write/link-itself": "ステップを自分自身の後に置くことはできません。",
  "write/link-ring":
    "「{$step}」を「{$other}」の後に置くことはできません。互いを待つことになり、誰も先へ進めなくなります。",
  "write/way-places": "この手順書の場所を2つ選んでください。",
  "write/way-to-itself": "経路は2つの場所を結びます。別の場所を選んでください。",
  "write/way-there": "「{$one}」と「{$other}」を結ぶ経路はすでにあります。",
  "write/way-needs-length": "経路の長さをmで入力してください。",
  "write/nobody": "ステップには担当が必要です。先に別のクルーを加えてください。",
  "write/hand-over-itself": "渡す人と受け取る人は別の人でなければなりません。",
  "write/not-held": "計画のその時点で、{$crew}は{$item}を所持していません。",
};
