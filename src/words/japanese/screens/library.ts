import type { libraryWords as english } from "../../english/screens/library.ts";
import type { Translated } from "../../translated.ts";

/** The procedures that a hub keeps, and the help of that page. */
export const libraryWords: Translated<typeof english> = {
  "library/title": "ハブのライブラリ",
  "library/what": "複数の計画者が作業する手順書",
  "library/alone":
    "このライブラリはこの端末だけのものです。ハブと接続すると、ほかの人が登録したものがここに届き、ここで登録したものがハブへ送られます。",
  "library/join": "ライブラリを接続",
  "library/join-how":
    "ハブの所有者コード、またはライブラリの責任者が作成したコードで開きます。ライブラリはこの端末にも保存され、接続が切れても使えます。",
  "library/linked": "{$hub}：{$state}、{$role}",
  "library/unsent": "ここで登録した改訂版 {$count :integer}件が、まだ送られていません。",
  "library/link": "接続とほかの参加者",
  "library/reading": "ライブラリを読み込んでいます。",
  "library/not-read": "ライブラリを読み出せませんでした：{$why}",
  "library/empty": "このライブラリに手順書はまだありません。",
  "library/unreadable": "{$count :integer}件のエントリーは、名前の分かる手順書を含まないため、扱いません。",
  "library/apart":
    "{$one :message}と{$other :message}は、どちらも{$base :message}から作られました。どちらにも、他方の変更は入っていません。",
  "library/apart-no-base":
    "{$one :message}と{$other :message}は、一方が他方から作られたものでも、ここにある1つの改訂版から作られたものでもありません。どちらにも、他方の内容は入っていません。",
  "library/more-heads": "ほかに{$count :integer}件の改訂版が並んでいます。",
  "library/bring-together": "1つにまとめる",
  "library/bring-how":
    "両方をこの端末に取り込み、競合を1つずつ並べて示します。保存したものは棚に置かれます。その後、両方から作ったものとしてここに登録してください。",
  "library/name": "{$by}の改訂 {$revision}",
  "library/name-bare": "{$by}の改訂版",
  "library/kept": "登録 {$at :utc form=second} UTC",
  "library/latest": "これから作られたものはまだありません",
  "library/on-shelf": "この端末の棚にあります",
  "library/take": "この端末に取り込む",
  "library/take-which": "{$name :message}をこの端末に取り込む",
  "library/refused":
    "このプログラムで読める手順書ではありません。新しい版のプログラムのライブラリで開いてください。",
  "library/keep-title": "改訂版をライブラリに登録",
  "library/keep-which": "この端末の棚にある改訂版",
  "library/keep-choice": "{$title}、改訂 {$revision}",
  "library/keep-choice-bare": "{$title}",
  "library/keep-bases": "元にした改訂版",
  "library/keep-bases-how":
    "内容に含まれているものをチェックしてください。チェックせず、続きもない改訂版は、誰かが1つにまとめるまで並んだままになります。",
  "library/keep-new": "この手順書は、ライブラリにまだありません。",
  "library/keep-from-none": "どれも元にしていない",
  "library/keep-who": "登録する人",
  "library/keep-why": "理由",
  "library/keep": "ライブラリに登録",
  "library/keep-known": "この内容はすでにライブラリにあります。",
  "library/keep-say": "元にした改訂版を指定してください。",
  "library/keep-stale":
    "それからは、すでに別の改訂版が作られています。あなたの改訂版はそれと並び、誰かが1つにまとめる必要があります。",
  "library/keep-may-not":
    "改訂版を登録できるのは、このライブラリの責任者だけです。あるものを取り込むことはできます。",
  "library/keep-nothing": "この端末の棚に、自分の手順書がありません。先に保存するか、取り込んでください。",
  "library/keep-done": "{$name :message}をライブラリに登録しました。",
  "guide/library": "ヘルプ：ハブのライブラリ",
  "guide/library-take":
    "取り込んだ改訂版は、登録した人と理由とともに、この端末の棚に置かれます。ライブラリの中は変わりません。",
  "guide/library-keep":
    "改訂版を登録すると、そのファイルがそのままライブラリに入ります。元にした改訂版を指定してください。ライブラリでは、何も上書きされず、取り除かれません。",
  "guide/library-apart":
    "2人の計画者が1つの改訂版からそれぞれ続きを作った場合、両方が残り、そのことが示されます。1つにまとめるときは、両方の元になった改訂版との比較が開きます。",
  "guide/library-figures": "改訂版は本文で識別されます。同じ本文は、誰が登録し直しても同じ改訂版です。",
  "guide/library-offline":
    "ライブラリは接続なしでも使えます。その間に登録したものは、接続が戻ったときに送られ、ほかの人が登録したものも届きます。",
  "guide/library-roles":
    "所有者コードを使うと責任者になり、ほかの人のためにコードを作れます。入力係または閲覧者として参加した人は、改訂版を取り込めますが、登録はできません。",
  "library-link/lead-may": "ライブラリに改訂を保管し、ほかの人の参加を認めます",
  "library-link/reader-may": "改訂を自分の端末に取り出します。保管はしません",
  "library-link/take-follower-off": "{$follower}をライブラリから外す",
  "library-link/take-unnamed-off": "この端末をライブラリから外す",
  "library-link/take-all-off-question": "ほかの全員をこのライブラリから外しますか？",
  "library-link/take-all-off-how":
    "コードや端末が不適切な人の手に渡ったときのためのものです。外される端末とハブ：{$others :integer}。すべてのコードが無効になります。保管されたものは残ります。",
  "library-link/all-taken-off":
    "ライブラリから外された端末：{$count :integer}。そのコードはすべて無効になりました。",
  "library-link/key-tied":
    "このタブレットに保管されており、誰もコピーできません。ほかの端末がライブラリでこのタブレットに成り代わることはできません",
  "library-link/key-copyable":
    "ブラウザーが鍵を保管できないため、数値としてこのタブレットに保管されています。タブレットのデータに触れられる人は、鍵をコピーしてライブラリでこのタブレットに成り代わるおそれがあります",
  "library-link/key-insecure":
    "なし。このページがTLSで開かれていないためです。ライブラリから抜けた場合、戻るにはハブの所有者が必要です",
  "library-link/key-unsupported":
    "なし。このブラウザーは鍵を作れないためです。ライブラリから抜けた場合、戻るにはハブの所有者が必要です",
  "library-link/key-not-kept":
    "なし。このタブレットは鍵を保管できなかったためです。ライブラリから抜けた場合、戻るにはハブの所有者が必要です",
  "library-link/only-here":
    "ほかの端末の改訂で、この端末だけにあるもの：{$count :integer}。ハブに届けるには、ハブから離れ、所有者のコードでライブラリをもう一度つないでください。",
  "library-link/scan-or-open":
    "読み取るか、{$host}を開いて船外活動への参加を選び、そこでハブのライブラリを選んでください。",
};
