import type { linkWords as english } from "../../english/screens/link.ts";
import type { Translated } from "../../translated.ts";

/** Joining, sharing and following a walk over a hub. */
export const linkWords: Translated<typeof english> = {
  "link/clock-set-back":
    "この端末の時計が{$by :length}戻されました。この船外活動の時刻は、変更がなかったものとして続きます。",
  "link/clock-set-ahead":
    "この端末の時計が{$by :length}進められました。この船外活動の時刻は、変更がなかったものとして続きます。",
  "link/join-title": "船外活動に参加",
  "link/join-what": "責任者が示すコードで参加します",
  "link/fetching": "ハブから船外活動を取得しています…",
  "link/fetching-of": "ハブから船外活動を取得しています：エントリー {$of :integer}件中 {$come :integer}件…",
  "link/asking-for-walk": "この船外活動は、この端末にありません。ハブに問い合わせています…",
  "link/no-walk-no-hub":
    "この端末にその船外活動はなく、取り戻せるハブからの応答もありません。10秒ごとに問い合わせます。",
  "link/no-walk-no-member":
    "この端末にその船外活動はなく、ハブもこのブラウザーを参加者として知りません。ここで進行していた場合は、この端末の保存分が消去されています。新しいコードで参加すると、ハブに届いていたものはすべて戻ります。",
  "link/no-walk-other-name":
    "この端末にその船外活動はありません。保存分が消去される前にここで進行していましたが、その後この端末で別の船外活動が始まっています。新しいコードで参加すると、ハブに届いていたものはすべて戻ります。",
  "link/who-uses": "このタブレットの使用者",
  "link/asking": "ハブに問い合わせています…",
  "link/over-the-gap": "対向側",
  "link/nobody-known": "参加者について、ハブからまだ情報がありません。",
  "link/unnamed": "名前なし",
  "link/this-tablet": "このタブレット",
  "link/take-off": "外す",
  "link/take-all-off": "全員を外す…",
  "link/take-all-off-question": "ほかの全員をこの船外活動から外しますか。",
  "link/take-all-off-how":
    ".input {$others :integer} .match $others 0 {{コードやタブレットが不適切な人の手に渡った場合に使います。ほかの参加者は知られていません。すべてのコードが終了します。入力されたものは残ります。}} * {{コードやタブレットが不適切な人の手に渡った場合に使います。ほかの端末またはハブ {$others}台は単独で続き、新しいコードを得るまで、そこからは何も届きません。すべてのコードが終了します。入力されたものは残ります。}}",
  "link/take-all-off-now": "全員を外す",
  "link/keep-all": "外さない",
  "link/all-taken-off":
    ".input {$count :integer} .match $count 0 {{ほかに参加者はいませんでした。すべてのコードが終了しました。}} * {{{$count}台の端末を外しました。すべてのコードが終了しました。}}",
  "link/take-follower-off": "{$follower}を参加者から外す",
  "link/take-unnamed-off": "この参加者を外す",
  "link/offer-marker": "入力係",
  "link/offer-marker-may": "ステップの完了、記録値、メモを入力",
  "link/offer-watcher": "閲覧者",
  "link/offer-watcher-may": "閲覧のみ",
  "link/offer-trainer": "教官",
  "link/offer-trainer-may": "すべてを閲覧し、リハーサルで想定外事象を発生させる",
  "link/offer-lead": "責任者",
  "link/offer-lead-may": "船外活動のクローズと、参加の許可も行う",
  "link/no-code": "ハブからコードを得られませんでした：{$why}",
  "link/invite": "別のタブレットを参加させる",
  "link/role": "役割",
  "link/how-many-tablets": "参加できるタブレットの数",
  "link/code-for": "タブレット {$count :integer}台まで、各1回有効。",
  "link/make-code": "コードを作る",
  "link/qr-code": "参加用アドレスのQRコード",
  "link/lets-in-as-lead": "責任者として参加可能、残り{$left :margin}。",
  "link/lets-in-as-marker": "入力係として参加可能、残り{$left :margin}。",
  "link/lets-in-as-watcher": "閲覧者として参加可能、残り{$left :margin}。",
  "link/lets-in-as-trainer": "教官として参加可能、残り{$left :margin}。",
  "link/lets-in-as-relay": "中継として参加可能、残り{$left :margin}。",
  "link/code-expired": "このコードは期限切れです。新しく作ってください。",
  "link/open-codes": "有効なコード",
  "link/open-code": "{$role}：あとタブレット {$count :integer}台、残り{$left :margin}。",
  "link/end-code": "このコードを終了",
  "link/codes-not-told": "有効なコードについて、ハブから情報を得られませんでした：{$why}",
  "link/scan-or-open": "読み取るか、{$host}を開いて「船外活動に参加」を選んでください。",
  "link/code-field": "コード（英数字9文字）",
  "link/join-example": "例：地上、IV",
  "link/join": "参加する",
  "link/join-how":
    "コードは、責任者の画面の「その他」、「接続」にあります。船外活動はこのタブレットにも保存され、接続が切れてもここで続けられます。",
  "link/state-alone": "単独",
  "link/state-linking": "接続中：ハブへの接続を試みています",
  "link/state-linked": "接続済み",
  "link/state-ended": "終了",
  "link/title": "接続",
  "link/hub": "ハブ",
  "link/role-here": "このタブレット",
  "link/key-here": "鍵",
  "link/key-tied":
    "このタブレットに保存され、誰も複製できません。ほかの端末がこのタブレットに成り代わることはできません",
  "link/key-copyable":
    "ブラウザーが鍵を保管できないため、数値としてこのタブレットに保存されています。このタブレットの保存内容を得た人は、複製して成り代わることができます",
  "link/key-insecure":
    "なし。このページがTLSで開かれていないためです。このタブレットが離れた場合、再び参加するにはハブの所有者が必要です",
  "link/key-unsupported":
    "なし。このブラウザーが鍵を作れないためです。このタブレットが離れた場合、再び参加するにはハブの所有者が必要です",
  "link/key-not-kept":
    "なし。このタブレットに鍵を保存できなかったためです。離れた場合、再び参加するにはハブの所有者が必要です",
  "link/entries": "エントリー",
  "link/last-word": "最後の通信",
  "link/clock-here": "この端末の時計",
  "link/beyond": "対向側",
  "link/beyond-hub": "{$what}。",
  "link/followers": "参加者",
  "link/leave-title": "離脱",
  "link/leave-how": "ここに保存されたものは残り、以後は送受信しません。",
  "link/leave-unsent":
    "ここに保存されたものは残り、以後は送受信しません。まだ送られていないエントリーが{$count :integer}件あります。",
  "link/leave": "ハブから離れる",
  "link/clock-agrees": "ハブと一致（± {$error :number minimumFractionDigits=2 maximumFractionDigits=2} s）",
  "link/clock-ahead":
    "ハブより{$size :message}進み（± {$error :number minimumFractionDigits=2 maximumFractionDigits=2} s）",
  "link/clock-behind":
    "ハブより{$size :message}遅れ（± {$error :number minimumFractionDigits=2 maximumFractionDigits=2} s）",
  "link/seconds": "{$size :number minimumFractionDigits=1 maximumFractionDigits=1} s",
  "link/minutes": "{$size :integer} min",
  "link/hours": "{$size :number minimumFractionDigits=1 maximumFractionDigits=1} h",
  "link/all-sent": "すべて送信済み",
  "link/fetched-of": "エントリー {$of :integer}件中 {$come :integer}件を取得",
  "link/not-sent": "未送信 {$count :integer}件",
  "link/only-here":
    "ほかの端末のエントリー {$count :integer}件が、このタブレットだけにあります。ハブに送るには、ハブから離れ、所有者コードで船外活動を共有し直してください。",
  "link/never-heard": "通信なし",
  "link/heard-seconds-ago": "最後の通信 {$seconds :integer} s前",
  "link/heard-ago": "最後の通信 {$ago :length}前",
  "link/in-memory": "メモリー上のみ",
  "link/export-before-closing": "閉じる前に書き出す",
  "link/bar-alone": "この端末のみ",
  "link/kept-here": "ログは端末内",
  "link/bar-linking": "接続中・{$heard}",
  "link/bar-linked": "接続済み",
  "link/bar-linked-heard": "接続済み・{$heard}",
  "link/bar-ended": "接続終了",
  "link/kept-here-only": "端末内のみ",
  "link/at-utc": "{$at :utc form=time-second} UTC",
  "link/another-hub": "別のハブ",
  "link/is-reading": "読み込み中",
  "link/seen-nothing": "まだ何も届いていない",
  "link/seen-all": "すべて届いている",
  "link/seen-up-to": "{$moment}まで届いている",
  "link/away-seen-up-to": "不在・{$moment}まで届いている",
  "link/hub-takes-nothing": "{$hub}は受け付けません：{$why}",
  "link/hub-refused": "{$hub}は受け付けません：拒否されました",
  "link/hub-got-nothing": "{$hub}にはまだ何も届いていません",
  "link/hub-got-all": "{$hub}にすべて届いています",
  "link/hub-got-up-to": "{$hub}に{$moment}まで届いています",
  "link/waiting-to-be-sent": "送信待ち {$count :integer}件",
  "link/another-device": "別の端末",
  "link/overruled-done":
    "あなたが入力したステップ {$number}「{$step}」の完了は無効です。先に{$who}がスキップしていました。変更するには、ステップを開いてください。",
  "link/overruled-skip":
    "あなたが入力したステップ {$number}「{$step}」のスキップは無効です。先に{$who}が完了を入力していました。変更するには、ステップを開いてください。",
  "link/overruled-asked-again":
    "あなたが入力したステップ {$number}「{$step}」の完了は無効です。その判断が未完了に戻っていました。実施済みの場合は、ステップを開き、理由を付けて順序外の完了を入力してください。",
  "link/overruled-settled":
    "ステップ {$number}「{$step}」のあなたの判断は無効です。責任者の{$who}が、有効な結果をすでに決めていました。責任者に尋ねてください。",
  "link/overruled-dropped":
    "あなたが入力したステップ {$number}「{$step}」の完了は無効です。{$who}がそのステップを計画から外していました。",
  "link/share-how":
    "この船外活動はこの端末だけにあります。{#b}{$host}{/b}のハブに渡すと、ほかのタブレットから閲覧や入力ができます。ここにあるものは、引き続きまずこの端末に保存されます。",
  "link/share-how-anywhere":
    "この船外活動はこの端末だけにあります。ハブに渡すと、ほかのタブレットから閲覧や入力ができます。ここにあるものは、引き続きまずこの端末に保存されます。",
  "link/hub-address": "ハブのアドレス",
  "link/hub-address-example": "例：https://vehicle.local:4173",
  "link/hub-address-how":
    "ハブのコンソールに表示されるhttps://で始まるアドレス、または招待のリンク全体。このタブレットがハブの証明書を信頼している必要があります。",
  "link/share-example": "例：地上",
  "link/owner-code": "ハブの所有者コード",
  "link/owner-code-where": "ハブの起動時に、コンソールに表示されます。",
  "link/share": "この船外活動を共有",
  "link/no-walk-yet":
    "これはハブ自身のコードですが、ハブに船外活動はまだありません。船外活動のあるタブレットから共有してください。",
  "link/which-walk": "これはハブ自身のコードです。どの船外活動の責任者になりますか。",
  "link/title-not-known": "不明",
  "link/walk-entries": "{$walk}、エントリー {$count :integer}件",
};
