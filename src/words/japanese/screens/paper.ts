import type { paperWords as english } from "../../english/screens/paper.ts";
import type { Translated } from "../../translated.ts";

/** Steps that were done while the crew worked from paper, entered afterwards with their times. */
export const paperWords: Translated<typeof english> = {
  "paper/title": "紙から入力",
  "paper/how":
    "その間に完了したものをチェックし、それぞれの完了時刻を書いてください。すべてその時刻で、{$who}の入力として一度に入ります。",
  "paper/owed": "値と確認は、後で各ステップに入力します。足りないものは「未了事項」に表示されます。",
  "paper/clock": "時刻の種類",
  "paper/clock-pet": "PET、時:分",
  "paper/clock-utc": "UTC、時:分",
  "paper/step": "{$number} {$crew}：{$step}",
  "paper/done-at": "ステップ {$number}の時刻",
  "paper/outcome": "ステップ {$number}の結果",
  "paper/choose-outcome": "結果を選択",
  "paper/none":
    "入力できるステップはありません。どのステップも済んでいるか、まだ行われていない判断によります。",
  "paper/more": "さらに{$count :integer}ステップを表示",
  "paper/enter": "{$count :integer}ステップを入力",
  "paper/entered": "{$count :integer}ステップを入力しました。",
  "paper/refused": "何も入力されていません。{$count :integer}件のステップに理由が示されています。",
  "paper/nothing-ticked": "チェックされたものがありません。",
  "paper/not-open": "このステップはすでに済んでいるか、判断の結果により実施されません。",
  "paper/no-time": "完了時刻を入力してください。時:分（例 1:05）、秒付きなら1:05:30。",
  "paper/before-zero": "時計の開始（{$zero :utc form=time-second} UTC）より前です。",
  "paper/in-future": "現在（PET {$now :clock}、{$utc :utc form=time-second} UTC）より後です。",
  "paper/needs-outcome": "結果を選んでください。",
  "paper/hangs-on":
    "ステップ {$number}（{$step}）の後に来ますが、その結果が想定と異なりました。先にそれを入力してから、これを入力してください。",
  "paper/after-open":
    "ステップ {$number}（{$step}）の後に来ますが、それが完了していません。それもチェックしてください。本当に順序外で完了した場合は、一覧でこのステップを開いて理由を入力してください。",
  "paper/after-later":
    "ステップ {$number}（{$step}）の後に来ますが、それが完了したのは後のPET {$at :clock}です。",
};
