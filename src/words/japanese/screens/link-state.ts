import type { linkStateWords as english } from "../../english/screens/link-state.ts";
import type { Translated } from "../../translated.ts";

/** How a link stands, what came of it, and why it fails: said by the link itself, of a tablet and of a hub alike. */
export const linkStateWords: Translated<typeof english> = {
  "link/no-answer": "時間内に応答がありませんでした。",
  "link/nothing-heard": "{$seconds :integer} sの間、応答がありません。",
  "link/answer-unfit": "応答が、送った内容と合っていません。",
  "link/clock-was-set": "照合中に、この端末の時計が変更されました。",
  "link/not-reached": "ハブにつながりません。",
  "link/device-refused": "ハブがこの端末を拒否しました。",
  "link/no-hub-here": "ここにハブはありません。",
  "link/unknown-hub": "ここで応答したハブは、このアプリでは扱えません。",
  "link/no-hub": "ここで応答したものはハブではありません。",
  "link/connection-lost": "ハブとの接続が切れました。",
  "link/not-the-owners-code": "このハブの所有者コードではありません。ハブのコンソールを見てください。",
  "link/name-of-another":
    "このタブレットの名前は、この船外活動では別の鍵のものです。データが別のタブレットから複製された場合などに起こります。ここにしかないものを書き出し、ブラウザーでこのサイトのデータを消去して、新しいタブレットとして参加してください。",
  "link/name-taken":
    "このタブレットは鍵なしですでに参加しており、ハブは同じタブレットかどうか判別できません。責任者に参加者から外してもらうか、所有者コードで参加してください。",
  "link/name-left":
    "このタブレットは鍵なしで書き込んだ後に離れたため、ハブは同じタブレットかどうか判別できません。所有者コードで参加するか、ブラウザーでこのサイトのデータを消去して、新しいタブレットとして参加してください。",
  "link/name-elsewhere":
    "このタブレットは対向側のハブのものとして知られています。そのハブで船外活動に参加してください。",
  "link/walk-not-linked": "この船外活動はハブと接続されていません。",
  "link/which-hub": "まずハブの場所を入力してください。",
  "link/not-an-address":
    "ハブのアドレスではありません。ハブのコンソールに表示されるとおり、https://で始まり、ポートで終わります。",
  "link/not-kept": "このタブレットに保存できませんでした：{$why :message}。",
  "link/trouble-here": "このタブレットはハブとの同期を保てません：{$trouble :message}。再試行を続けます。",
  "link/reading-anew": "船外活動の保存分がなくなったため、読み込み直しています",
  "link/unreadable":
    "ハブのエントリー {$count :integer}件がここにありません。アプリのこの版では読み取れないためです。アプリを更新してください。",
  "link/restamped":
    "このタブレットの時計が進んでいたため、エントリー {$count :integer}件をハブの時計で並べ直しました。時計を合わせてください。",
  "link/restamped-by":
    "このタブレットの時計が{$by :length}進んでいるため、エントリー {$count :integer}件をハブの時計で並べ直しました。時計を合わせてください。",
  "link/entered-anew":
    "ハブの同じ番号に別のエントリーがあったため、エントリー {$count :integer}件を新しい番号で入力し直しました。失われたものはありません。",
  "link/set-aside": "エントリー {$count :integer}件を別に置きました。効力はありません：{$why :message}。",
  "link/aside-refused": "ハブが拒否した",
  "link/aside-not-an-entry": "ハブがそのようなエントリーを読み取れない",
  "link/aside-other-walk": "ハブが受け付けるのはこの船外活動のエントリーだけである",
  "link/aside-other-source": "ハブが受け付けるのはこのタブレットで作られたものだけである",
  "link/aside-role": "このタブレットの役割では、そのようなエントリーを書き込めない",
  "link/aside-ahead": "時刻が進みすぎたエントリーをハブは受け付けない",
  "link/aside-limit": "ハブには長すぎるか、もう空きがない",
  "link/aside-conflict": "ハブのその位置に別のエントリーがある",
};
