import type { amendmentWords as english } from "../../english/screens/amendments.ts";
import type { Translated } from "../../translated.ts";

/** What is said of amendments of a running walk: why one has no effect, and what one does. */
export const amendmentWords: Translated<typeof english> = {
  "walk/amended": "計画を変更",
  "walk/amended-because": "計画を変更：{$reason}",
  "walk/step-dropped": "計画変更により「{$step}」は計画から外されています",
  "amend/changes-nothing": "何も変更しません",
  "amend/unreadable": "変更の内容を読み取れません：{$why :message}",
  "amend/cannot-apply": "変更 {$number :integer}を適用できません：{$why :message}",
  "amend/unsound": "この変更を加えると手順書を使えなくなります：{$why :message}",
  "amend/begun-dropped": "「{$step}」は開始済みまたは済みのため、計画から外せません",
  "amend/entered-dropped":
    "「{$step}」に関するエントリーがあるため、計画から外せません。理由を付けてスキップできます",
  "amend/begun-moved": "「{$step}」は開始済みまたは済みのため、移動できません",
  "amend/begun-changed": "「{$step}」は開始済みのため、担当、場所、判断、移す物品は変更できません",
  "amend/complete-changed": "「{$step}」は済みのため、変更できません",
  "amend/before-begun":
    "{$crew}のステップの中で、「{$step}」が、開始済みまたは済みの「{$begun}」より前に来ることになります",
  "amend/decision-gone": "判断「{$decision}」は行われているため、そのまま残す必要があります",
  "amend/named-gone": "「{$id}」はエントリーで使われているため、手順書に残す必要があります",
  "amend/no-order": "残りのステップの順序が成り立ちません：{$why :message}",
  "amend/no-forecast": "残りの船外活動を計画できなくなります。",
  "amend/unfit": "「{$step}」がどの時間帯にも収まらなくなります。",
  "amend/over-limit": "見込み時間では、船外活動の終了が制限時間を超えます。余裕は{$margin :margin}です。",
  "amend/no-home": "帰路を計算できなくなります。",
  "amend/past-redline":
    "{$crew}：{$supply}が、最後のステップの完了前にレッドラインに達します。余裕は{$margin :margin}です。",
  "amend/not-there": "そのような計画変更はないか、効力がありません",
  "amend/already-seen": "この端末では、その計画変更をすでに確認済みです",
};
