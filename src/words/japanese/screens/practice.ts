import type { practiceWords as english } from "../../english/screens/practice.ts";
import type { Translated } from "../../translated.ts";

/** The guide beside a practice walk, and what offers it. */
export const practiceWords: Translated<typeof english> = {
  "practice/guide": "練習ガイド",
  "practice/clock": "リハーサル・画面を見ている間だけ時計が進みます",
  "practice/put-away": "ガイドを隠す",
  "practice/bring-back": "練習ガイドを表示",
  "practice/finish": "練習を終える",
  "practice/tried": "体験済み：{$all :integer}項目中{$count :integer}",
  "practice/tried-tap": "タップ",
  "practice/tried-joint": "共同ステップ",
  "practice/tried-value": "許容範囲外の値",
  "practice/tried-contingency": "異常時手順",
  "practice/tried-close": "レビュー",
  "practice/is-tried": "体験済み",
  "practice/not-tried": "未体験",
  "practice/start":
    "あなたは船内のIVです。ステップを読み上げ、船外の2人の報告をタップで入力します。「リハーサルの時計を開始」をタップしてください。",
  "practice/first":
    "端にはクルー1人に1本のひもがあり、待っているクルーのひもはたるみます。最初は{$crew :list}のステップ {$step}です。その横の「完了」をタップしてください。",
  "practice/go-on":
    "次は{$crew :list}のステップ {$step}です：{$action}。完了の報告を聞いたら「完了」をタップしてください。",
  "practice/waits":
    "{$waiting}は共同ステップ {$joint}に到達し、そこで{$missing}を待っています。ひもはそこまでたるんで下がります。{$crew :list}のステップ {$step}を続けてください。",
  "practice/joint":
    "{$crew :list}はともにステップ {$step}にいます。結び目が2人のひもを引き寄せ、「完了」の1回のタップで2人分が入力されます。",
  "practice/joint-confirm":
    "{$crew :list}はともにステップ {$step}にいて、結び目が2人のひもを引き寄せています。ここでは確認があります。「確認した」、続いて「完了」をタップすると、2人分が入力されます。",
  "practice/value-outside":
    "ステップ {$step}では「{$record}」の記録が必要です。アラートを見るには、{$value :quantity}を入力してください。入力欄の横にある許容範囲を外れた値です。",
  "practice/value":
    "ステップ {$step}では「{$record}」の記録がもう一度必要です。{$value :quantity}を入力し、「完了」をタップしてください。",
  "practice/owed":
    "ステップ {$step}は「{$record}」の記録なしで完了しました。上のバーのとおり、記録は未了です。一覧でステップを開いて入力するか、そのまま続けてください。続けた場合は未了のままです。",
  "practice/within":
    "許容範囲内の値なので、アラートは出ません。アラートを見るには、代わりに「{$record}」に{$value :quantity}を入力してください。{$else :message}",
  "practice/outside":
    "値が許容範囲外で、時計の下のアラートがそれを示しています。下の「異常時手順」、「{$contingency}」、「組み込みの影響を見る」、「計画変更を入力」の順にタップしてください。{$else :message}",
  "practice/or-go-on": "または{$crew :list}のステップ {$step}を続けてください。",
  "practice/go-on-anyhow": "または、そのままで構いません。",
  "practice/brought":
    "異常時手順が計画に組み込まれました。どれだけかかったかはレビューに示されます。{$crew :list}のステップ {$step}はその一部です：{$action}。「完了」をタップしてください。",
  "practice/close":
    "すべてのステップが済みました。一覧の下の「船外活動をクローズ」をタップし、クローズしてください。",
  "practice/nobody-works":
    "いまは誰もステップを始められません。誰や何を待っているかは、上のカードに示されます。",
  "practice/held":
    "船外活動はホールド中で、ステップは待っています。再開してよいときに「ホールド解除」をタップしてください。",
  "practice/closed": "船外活動はクローズされました。一覧の下の「レビューを読む」をタップしてください。",
  "practice/closed-early":
    "終わる前に船外活動をクローズしましたが、差し支えありません。一覧の下の「レビューを読む」でその扱いを見るか、そこで船外活動を再開してください。",
  "practice/review":
    "これがレビューです。計画と実績、誰が誰を待ったか、違っていたことのすべてが並びます。練習はここまでです。次はあなたの船外活動です。",
  "practice/skipped": "ステップ {$step}をスキップしました。済みとして扱われ、レビューに示されます。",
  "practice/out-of-order":
    "ステップ {$step}は順序外で入力されました。入力は受け付けられ、レビューに示されます。",
  "practice/open-again": "ステップ {$step}は未完了に戻っています。",
};
