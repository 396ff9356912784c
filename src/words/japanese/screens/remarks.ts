import type { remarkWords as english } from "../../english/screens/remarks.ts";
import type { Translated } from "../../translated.ts";

/** What readers of a procedure remark, and the panel in which they do. */
export const remarkWords: Translated<typeof english> = {
  "remarks/no-json": "意見の形になっていません。",
  "remarks/newer": "プログラムの新しい版のものです。",
  "remarks/unusable": "使える「{$key}」がありません。",
  "remarks/says-nothing": "内容のないコメントです。",
  "remarks/names-nothing": "ほかの意見への応答ですが、どれに対するものか書かれていません。",
  "remarks/too-many": "意見が{$most :integer}件を超えています。残りは除外しました。",
  "remarks/open": "{$name}（{$role}）：{$says}",
  "remarks/open-before": "{$name}（{$role}）、改訂 {$revision}に対して：{$says}",
  "remarks/open-of-gone-step": "{$name}（{$role}）、なくなったステップ「{$step}」に対して：{$says}",
  "remarks/title": "意見",
  "remarks/button": ".input {$count :integer} .match $count 0 {{意見}} * {{意見（未解決 {$count}）}}",
  "remarks/advises":
    "意見は何も承認しません。この手順書を実施してよいかは、ここではなく、あなたの組織の手続きで決まります。",
  "remarks/who": "あなたの名前",
  "remarks/role": "発言者の役割",
  "remarks/needs-who": "まず名前と発言者の役割を入力してください。",
  "remarks/about": "対象",
  "remarks/whole": "改訂版全体",
  "remarks/step": "{$number} {$action}",
  "remarks/gone-step": "なくなったステップ「{$step}」",
  "remarks/comment": "コメント",
  "remarks/add": "コメントを追加",
  "remarks/agree": "この内容に同意",
  "remarks/agree-how":
    "同意はこの内容だけに対するものです。ファイルが少しでも変わると効力がなくなり、このページにそう示されます。",
  "remarks/no-digest":
    "ここでは同意できません。このページが安全な接続で提供されていないため、内容をほかと区別できません。コメントはできます。",
  "remarks/agreed": "同意した人",
  "remarks/nobody": "この内容に同意した人はいません。",
  "remarks/agreement": "{$name}（{$role}）が{$what}に同意",
  "remarks/holds": "この内容に有効",
  "remarks/holds-not": "別の内容（改訂 {$revision}）への同意で、この内容には無効",
  "remarks/withdraw": "撤回",
  "remarks/withdraw-whose": "{$what}への{$name}の同意を撤回",
  "remarks/open-comments": "未解決のコメント",
  "remarks/no-open": "未解決のコメントはありません。",
  "remarks/resolved-comments": "解決済みのコメント",
  "remarks/of-revision": "{$at :utc} UTC、改訂 {$revision}",
  "remarks/resolve": "解決",
  "remarks/resolve-whose": "解決済みにする：{$says}",
  "remarks/reopen": "未解決に戻す",
  "remarks/reopen-whose": "未解決に戻す：{$says}",
  "remarks/resolved-by": "{$names :list}が解決済みにした",
  "remarks/idle":
    "{$count :integer}件の意見は効力がありません。ここにないものを指しているか、ほかの人のものを撤回しようとしています。",
  "remarks/conflicting": "{$count :integer}件の意見は、ほかとidが同じで内容が異なるため、効力がありません。",
  "remarks/export": "ファイルに保存",
  "remarks/import": "ファイルを取り込む",
  "remarks/taken-in":
    "意見 {$added :integer}件を取り込みました。{$known :integer}件はすでにありました。それぞれ該当する手順書に付きます。",
  "remarks/line": "{$line :integer}行目：{$why :message}",
  "remarks/not-kept": "意見をこの端末に保存できませんでした：{$why :message}",
};
