import type { hubAnswerWords as english } from "../../english/hub/answers.ts";
import type { Translated } from "../../translated.ts";

/** What a hub answers to whoever asks it, beside the code for programs. */
export const hubAnswerWords: Translated<typeof english> = {
  "answer/body-too-large": "本文が大きすぎます。小さく分けて送ってください。",
  "answer/too-much-a-minute": "この端末は一度に送りすぎています。少し待ってください。",
  "answer/media-type":
    "application/json、application/cloudevents-batch+json、application/cloudevents+jsonのいずれかで送ってください。",
  "answer/content-length": "本文の長さがContent-Lengthと異なります。",
  "answer/bad-address": "アドレスの書き方が正しくありません。",
  "answer/own-mistake": "ハブで内部エラーが起きました。詳細はハブのコンソールにあります。",
  "answer/headers-too-large": "ヘッダーが16 kBを超えています。",
  "answer/too-slow": "リクエストの受信に時間がかかりすぎました。",
  "answer/full": "このハブは接続の上限に達しています。しばらくしてもう一度試してください。",
  "answer/other-name":
    "このハブはこの名前では提供されていません。アドレスで開くか、--also-asにこの名前を付けてハブを起動してください。",
  "answer/not-understood": "リクエストを解釈できません。",
  "judge/no-entry": "エントリーではありません：{$why :message}。",
  "judge/control-characters": "エントリーではありません。発信元またはidに制御文字があります。",
  "judge/other-walk": "subjectが、送り先の船外活動ではありません。",
  "judge/seal-does-not-fit": "封印が、端末の参加時の鍵と合いません。",
  "judge/not-by-role": "書き込めません：{$why :message}。",
  "judge/too-long":
    "{$length :integer}文字あります。この種類のエントリーは、ここでは{$most :integer}文字までです。短くしてください。",
  "judge/no-room": "もう空きがありません。船外活動全体、またはこの端末の割り当てがいっぱいです。",
  "judge/ahead":
    "hlcがハブの時計より{$seconds :integer} s進んでいます。端末の時計を合わせ、時刻を付け直してください。",
  "judge/time-ahead":
    "timeがハブの時計より{$days :integer}日進んでいます。端末またはハブの時計を合わせてください。",
  "judge/own-device":
    "このハブが自ら参加を認めた端末のもので、その端末が自分で送ります。これは別に置かれます。",
  "judge/conflict": "発信元とidが同じ別のエントリーがすでにあります。これは別に置かれます。",
  "answer/no-token": "先に船外活動に参加してください。これにはトークンが必要です。",
  "answer/bad-token": "このトークンは無効です。参加し直してください。",
  "answer/cross-site": "別のサイトのページからは実行できません。",
  "answer/other-walk": "このトークンは別の船外活動のものです。",
  "answer/bad-walk": "船外活動のidの書き方が正しくありません。",
  "answer/no-device": "所有者コードは端末のものではありません。船外活動に参加してください。",
  "answer/lead-only": "これを行えるのは、船外活動の責任者だけです。",
  "answer/bad-code": "このコードは無効です。別のコードを求めてください。",
  "answer/code-used": "このコードは参加台数に達しました。別のコードを求めてください。",
  "answer/walk-needed": "所有者コードは特定の船外活動のものではありません。船外活動を指定してください。",
  "answer/relay-by-owner":
    "別のハブの参加を認められるのは、ハブの所有者だけです。所有者コードでコードを作ってください。",
  "answer/bad-proof":
    "この端末の鍵が証明されていません。すぐに次のチャレンジを求め、このハブ、船外活動、端末に対して署名してください。",
  "answer/other-key":
    "この端末の名前は、この船外活動では別の鍵のもので、その鍵だけが使えます。新しい名前で参加してください。",
  "answer/key-needed":
    "この端末の名前は、この船外活動ではある鍵のものですが、その鍵が証明されていません。その鍵か、新しい名前で参加してください。",
  "answer/device-taken":
    "この名前の端末が鍵なしで参加しており、参加中はその名前を保持します。そのトークンか新しい名前で参加するか、責任者に外してもらってください。",
  "answer/device-left":
    "この名前の端末は鍵なしで書き込んだ後に離れたため、同じ端末かどうか判別できません。ハブの所有者コードか、新しい名前で参加してください。",
  "answer/device-elsewhere":
    "この名前は、接続されている別のハブの端末のものです。そちらで参加するか、新しい名前で参加してください。",
  "answer/too-many": "リクエストが多すぎます。少し待ってください。",
  "answer/too-many-tries":
    "このネットワークから誤ったコードが多く届きました。{$seconds :integer} s後にもう一度試してください。",
  "answer/not-json": "本文がUTF-8のJSONではありません。",
  "answer/bad-part": "本文に「{$where}」がないか、正しくありません。",
  "answer/bad-body": "本文が、求められたJSONオブジェクトではありません。",
  "answer/store": "このハブの保存先に書き込めません。",
  "answer/too-many-entries": "一度に送れるエントリーは{$most :integer}件までです。",
  "answer/bad-cursor": "カーソルの書き方は<epoch>:<offset>、または末尾に検査値を付けたものです。",
  "answer/send-one": "イベントを1件送ってください。",
  "answer/send-array": "イベントのJSON配列を送ってください。",
  "answer/not-found": "このアドレスには何もありません。",
  "answer/no-invitation": "この船外活動へのその招待は、ないか、無効になっています。",
  "answer/no-follower": "この船外活動にその端末はありません。",
};
