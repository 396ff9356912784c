import type { helpOfJoinWords as english } from "../../english/screens/help-join.ts";
import type { Translated } from "../../translated.ts";

/** The help of joining a walk. */
export const helpOfJoinWords: Translated<typeof english> = {
  "guide/join": "ヘルプ：船外活動への参加",
  "guide/join-code":
    "責任者が「その他」の「接続と参加者」でコードを作ります。英数字9文字で、15分間有効です。責任者が指定した台数（指定がなければ1台）のタブレットが、1つの役割で参加できます。",
  "guide/join-roles":
    "責任者は、クローズと参加の許可も行います。入力係は、ステップの完了、記録値、メモを入力します。閲覧者は見るだけです。",
  "guide/join-owner":
    "ハブの所有者コードを使うと、ハブのどの船外活動でも責任者になれます。一覧から選んでください。",
  "guide/join-kept": "参加した船外活動はこの端末にも保存され、接続が切れてもここで続きます。",
  "guide/join-expired":
    "期限切れのコード、打ち間違えたコード、参加台数に達したコードでは参加できません。責任者に別のコードを求めてください。誤ったコードが何度か続くと、ハブはこのネットワークの全員を数秒待たせます。",
  "guide/join-key":
    "各タブレットは、誰も複製できない鍵を持ち、それをハブに示します。ほかの誰かが船外活動で成り代わることはできません。TLSがない場合や古いブラウザーでは鍵がなく、「接続と参加者」の画面にそう示されます。",
  "guide/join-unreachable":
    "ハブが応答しない場合は、この端末がハブと同じネットワークにあり、アドレスがハブのものであることを確かめてください。",
};
