import type { findingsOfProcedureWords as english } from "../../english/screens/findings-procedure.ts";
import type { Translated } from "../../translated.ts";

/** What the checker says of a procedure that could be read: order, decisions, supplies, ways, tethers, custody, wording. */
export const findingsOfProcedureWords: Translated<typeof english> = {
  "check/when": "{$finding :message}（条件：{$conditions :list style=chained}）",
  "check/when-outcome": "「{$decision}」の結果が「{$outcome}」",
  "check/when-get-ahead": "余裕時タスクのうち「{$task}」だけを実施",
  "task/needs-get-ahead":
    "余裕時タスク「{$task}」は、余裕時タスク「{$other}」なしでは実施できません。1つのタスクにまとめるか、「{$task}」に必要なものを自分で持たせてください。",
  "task/needs-get-aheads":
    "余裕時タスク「{$task}」は単独では実施できず、ほかのすべてと一緒の場合だけ実施できます。1つのタスクにまとめるか、「{$task}」に必要なものを自分で持たせてください。",
  "check/when-get-aheads": "余裕時タスクをすべて実施",
  "order/not-all-scenarios":
    "結果の組み合わせが多すぎて1つずつ検査できません。想定から1つまたは2つだけ異なる場合をすべて検査しました（{$count :integer}通り）。",
  "order/deadlock": "デッドロック：次のステップが互いを待ち続けます。{$waits :clauses}。",
  "order/waits-in-lane":
    "「{$step}」（{$crew :list style=chained}）は、レーンで前にある「{$other}」を待ちます",
  "order/waits-on-step":
    "「{$step}」（{$crew :list style=chained}）は、「{$other}」（{$otherCrew :list style=chained}）を待ちます",
  "order/more-races":
    "物品または状態をめぐって競合するステップの組が{$most :integer}を超えています。残りは表示しません。",
  "order/mend-deadlock": "「{$step}」の先行条件から「{$other}」を外す。",
  "place/mend-at": "「{$step}」の場所を{$place}にする。",
  "place/mend-translation": "「{$step}」の前に{$crew}を{$place}へ移動させる。",
  "custody/mend-receiver": "「{$step}」に{$crew}を加える。",
  "order/race-moves":
    "「{$mover}」（{$moverCrew :list style=chained}）と「{$other}」（{$otherCrew :list style=chained}）がどちらも{$item}を移しますが、どちらが先かが決まっていません。一方を他方の後に置いてください。",
  "state/race":
    "「{$one}」は{$state}を{$value}に、「{$other}」は{$otherValue}にしますが、どちらが先かが決まっていません。一方を他方の後に置いてください。",
  "state/needs": "「{$step}」には{$state}が{$value}であることが必要です。{$why :message}",
  "state/between":
    "「{$other}」は{$state}を{$is}にし、「{$step}」より前に来る可能性があります。「{$other}」を「{$step}」の後に置くか、間のステップで再び{$value}にしてください。",
  "state/not-set-first":
    "「{$other}」は{$state}を{$value}にしますが、それが先とは決まっていません。それまでは{$is}です。「{$step}」を「{$other}」の後に置くか、前のステップで設定してください。",
  "state/set-too-late":
    "「{$other}」が{$state}を{$value}にするのは「{$step}」の後です。それまでは{$is}です。「{$step}」を「{$other}」の後に置くか、前のステップで設定してください。",
  "state/never-set":
    "開始時から{$is}で、{$state}を{$value}にするステップはありません。「{$step}」の前にそうするステップを加えるか、「{$step}」に必要な状態を直してください。",
  "state/unset":
    "「{$other}」が{$state}を{$is}にし、その後{$value}に戻すものがありません。「{$step}」を「{$other}」の前に置くか、間に設定するステップを加えてください。",
  "state/not-at-its-end":
    "終了時の{$state}は開始時と同じ{$is}で、必要な{$end}になっていません。設定するステップを加えてください。",
  "state/left-by":
    "終了時の{$state}は「{$step}」の後の{$is}のままで、必要な{$end}になっていません。その後に設定するステップを加えてください。",
  "order/race-takes-out":
    "「{$mover}」（{$moverCrew :list style=chained}）が{$item}を移しますが、「{$other}」（{$otherCrew :list style=chained}）は{$handled}を扱うために{$item}が元の位置にあることを必要とします。どちらが先かが決まっていません。一方を他方の後に置いてください。",
  "order/race-puts-in":
    "「{$mover}」（{$moverCrew :list style=chained}）が{$item}を移しますが、「{$other}」（{$otherCrew :list style=chained}）は{$handled}をその中に入れます。どちらが先かが決まっていません。一方を他方の後に置いてください。",
  "decision/one-outcome": "判断「{$decision}」の結果は「{$outcome}」だけで、判断することがありません。",
  "decision/no-branch": "判断「{$decision}」の結果によって変わるステップがありません。",
  "decision/never-performed":
    "「{$step}」は実施されることがありません。必要な結果がそろう場合がないためです。",
  "task/closeout-get-ahead":
    "「{$task}」は帰路で必ず実施するため、時間不足で除外される余裕時タスクにはできません。",
  "record/no-supply":
    "{$crew :list of=any}に消耗品「{$supply}」がないため、この記録値は誰の読み値にもなりません。このステップの担当が持つ消耗品を指定してください。",
  "record/other-unit":
    "記録値の単位は{$unit}ですが、消耗品「{$supply}」は{$other}です。同じ単位にしてください。",
  "supply/redline-above-full":
    "{$crew}の{$supply}は満量が{$full :number}、レッドラインが{$redline :number}です。船外活動の開始前に使い切っていることになります。",
  "supply/short":
    "計画の消費率では、{$crew}の{$supply}はPET {$at :clock}にレッドラインに達します。{$crew}が「{$step}」を終える{$before :length}前です。",
  "watch/never-on":
    "定期確認「{$watch}」は始まる前に終わります。「{$until}」の開始が「{$from}」の完了より後になりません。",
  "watch/none-due":
    "定期確認「{$watch}」の期限が来ることはありません。間隔は{$every :length}ですが、有効な期間は{$on :length}だけです。",
  "time/beyond-turn-back":
    "「{$step}」により{$crew}はPET {$until :clock}まで{$place}にとどまります。そこで中断すると、帰還は撤収作業をすべて含めて{$back :length}かかります。制限時間 {$limit :clock}までに戻るには、全員がPET {$latest :clock}までに引き返す必要があり、{$over :length}過ぎています。",
  "time/no-return":
    "「{$step}」の終わり、PET {$at :clock}で中断すると、撤収作業がどの時間帯にも収まらないため、以後の引き返し時刻を計算できません。",
  "time/return-barred":
    "「{$step}」の終わり、PET {$at :clock}で中断すると、帰路がふさがれているため、以後の引き返し時刻を計算できません。{$why :message}",
  "time/return-breaks": "「{$step}」の終わり、PET {$at :clock}で中断した場合：{$what :message}",
  "return/bar": "{$need :message}{$setter :message}",
  "return/step-needs": "「{$step}」には{$state}が{$value}であることが必要ですが、{$is}になっています。",
  "return/way-needs":
    "{$crew}が{$place}へ行く経路には{$state}が{$value}であることが必要ですが、{$is}になっています。",
  "return/refuge-needs":
    "{$crew}が退避場所へ行く経路には{$state}が{$value}であることが必要ですが、{$is}になっています。",
  "return/set-by-none": "それを設定するステップはありません。",
  "return/set-by-closeout": "それを設定するのは「{$step}」ですが、その前には実施できません。",
  "return/set-by-left-out":
    "それを設定するのは「{$step}」ですが、撤収作業のステップではないため、帰路では除外されます。",
  "return/set-by-done":
    "それを再び設定するのは「{$step}」ですが、すでに完了しており、撤収作業に設定するステップはありません。",
  "return/done-late": "帰路では、「{$step}」の完了が期限のPET {$by :pet}より{$over :length}遅れます。",
  "return/started-late":
    "帰路では、「{$step}」の開始が「{$after}」の後{$within :margin}を超え、{$over :length}遅れます。",
  "place/no-refuge":
    "退避場所が1つもないため、引き返し時刻を計算できません。安全な場所を退避場所にしてください。",
  "place/no-way-home":
    "{$place}から退避場所へ時間の付いた経路がないため、そこで行うステップの引き返し時刻を計算できません。",
  "place/no-start": "「{$step}」に時間がなく、担当の誰にも開始の場所がありません。",
  "place/not-there": "{$crew}は{$place}にいますが、「{$step}」の場所は{$at}で、そこへの移動がありません。",
  "place/no-way-unknown":
    "「{$step}」の前に{$crew}がどこにいるか不明なため、経路から移動の時間を求められません。",
  "place/no-way": "{$from}から{$to}へ時間の付いた経路がないため、「{$step}」には固有の時間が必要です。",
  "text/confirms-itself":
    "「{$step}」では、{$crew}が1人で行うことを{$crew}自身が確認しています。別のクルーに確認させてください。",
  "unit/not-valid":
    "「{$unit}」はUCUMの記号でないため、数値の意味が誰にも分かりません。kPa、N.m、/minのような単位の記号を書いてください。",
  "unit/not-valid-meant":
    "「{$unit}」はUCUMの記号でないため、数値の意味が誰にも分かりません。最も近い記号は「{$meant}」です。",
  "unit/mend": "「{$unit}」を「{$meant}」にする。",
  "size/far-off":
    "「{$step}」の{$record}には{$value :number} {$unit}という限度があり、{$unit}のほかのどの限度とも100倍以上異なります。数値と単位が合っているか見てください。",
  "time/zero":
    "「{$step}」は作業があるのに時間がゼロです。所要時間を書くか、作業を外して節目だけのステップにしてください。",
  "time/long":
    "「{$step}」の所要は見込み{$likely :length}、最長{$high :length}で、1ステップで4時間を超えています。時間が正しいか見るか、いくつかのステップに分けてください。",
  "time/spread":
    "「{$step}」の所要は最短{$low :length}、最長{$high :length}で、100倍以上の差があります。両方の単位が正しいか見てください。",
  "time/seconds":
    "「{$step}」の所要は{$likely :length}ですが、ステップの半数は{$usual :length}を超えます。分のつもりでないか見てください。",
  "text/hand-over-not-confirmed":
    "「{$step}」で{$item}が受け渡されますが、確実に持ったことを確認する人がいません。確認を加えてください。",
  "text/mate-not-confirmed":
    "「{$step}」で結合が行われますが、それを確認する人がいません。確認を加えてください。",
  "text/many-actions":
    "「{$step}」には2つ以上の作業が含まれているようです。1ステップに1作業の方が、追うのも入力するのも簡単です。",
  "text/no-verb": "「{$step}」が、何をするかで始まっていません。動詞で始めてください。",
  "text/receiver-not-named": "「{$step}」で{$item}が{$crew}に渡りますが、本文に{$crew}の名がありません。",
  "place/way-closed":
    "「{$step}」で{$crew}は{$from}から{$to}へ行きますが、この経路を使えるのは{$state}が{$value}の間だけです。{$why :message}",
  "tether/reach-not-known":
    "{$crew}のテザーの固定点{$anchor}から{$place}への経路がないため、「{$step}」でテザーが届くか判断できません。",
  "tether/out-of-reach":
    "「{$step}」で{$crew}は{$place}にいます。{$crew}のテザーの固定点{$anchor}からは最短の経路で{$way :metres}ですが、テザーの長さは{$length :metres}で、{$short :metres round=up}足りません。先に固定点を近くへ移してください。",
  "tether/anchor-not-there":
    "「{$step}」で{$crew}のテザーの固定点を{$anchor}に移しますが、{$crew}は{$place}にいます。",
  "tether/shared-route":
    "{$one}（{$oneDuring :message}）と{$other}（{$otherDuring :message}）のテザーが、ともに{$from}と{$to}の間の経路にかかる可能性があります。絡まないようにしてください。",
  "tether/in-step": "「{$step}」の間",
  "tether/from-step-to-step": "「{$first}」から「{$last}」までの間",
  "custody/would-be-inside-itself": "「{$step}」の後、{$item}が自分自身の中に入ることになります。",
  "custody/not-held":
    "「{$step}」で{$crew :list style=chained}は{$item}を移せません。{$item}の位置：{$where :message}。",
  "custody/hand-over-apart":
    '「{$step}」で{$item}を{$giver}（{$giverAt :message}）から{$receiver}（{$receiverAt :message}）へ渡せません。先に2人を同じ場所に置くか、"at"で場所を指定してください。',
  "custody/hands-full":
    "「{$step}」の後、PET {$at :clock}に{$crew}は{$items :list style=chained}を手に持ち、手が{$needed :integer}本必要になります。先に何かをしまうか、渡してください。",
  "custody/hands-full-at-start":
    "PET {$at :clock}に{$crew}は{$items :list style=chained}を手に持ち、手が{$needed :integer}本必要になります。いずれかの開始時の位置を変えてください。",
  "place/inside-works-outside":
    "「{$step}」の場所{$place}は船外ですが、担当に船外のクルーがいません（{$crew :list style=chained}）。船外のクルーを指定するか、場所を外してください。",
  "custody/receiver-absent":
    "「{$step}」で{$item}が{$crew}に渡りますが、{$crew}はこのステップに加わっていません。",
  "custody/place-not-there": "「{$step}」で{$item}を{$place}に置きますが、担当の誰もそこにいません。",
  "custody/bag-not-at-hand":
    "「{$step}」で{$item}を{$bag}に入れますが、{$crew :list style=chained}の手元に{$bag}がありません。",
  "custody/not-at-its-end": "終了時の{$item}が必要な位置（{$end :message}）にありません：{$is :message}。",
  "custody/left-outside":
    "{$item}が終了時に船外に残ります（{$is :message}）。船内に入れるか、終了時の位置を指定してください。",
  "custody/where-nowhere": "どこにもない",
  "custody/where-unknown": "不明な場所",
  "custody/where-crew": "{$crew :list style=chained}が所持",
  "custody/where-inside": "船内",
  "custody/where-ground": "地上",
  "custody/where-place": "{$place}",
  "custody/where-item": "{$item}の中",
  "words/no-member": "{$language}の訳文にある「{$key}」というidで文のあるものはありません。",
  "words/no-text": "{$language}の訳文で「{$key}」に「{$field}」がありますが、作成者の原文がありません。",
  "words/several":
    "{$language}の訳文の「{$key}」は、「{$field}」のある複数のものを指し得ます。「places {$key}」のように、idの前にリスト名を書いてください。",
  "words/too-many": "{$language}の訳文で「{$key}」の「{$field}」は、作成者の原文より数が多くなっています。",
  "words/older":
    "「{$key}」の「{$field}」の{$language}の訳文は、元の文より古くなっています。元の文は「{$was}」から「{$is}」に変わりました。",
  "words/missing":
    ".input {$count :integer} .match $count * {{{$language}の訳文がまだないものが{$count}件あります。そこでは作成者の原文を表示します。}}",
};
