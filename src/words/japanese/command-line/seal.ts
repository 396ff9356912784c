import type { sealSentences as english } from "../../english/command-line/seal.ts";
import type { Translated } from "../../translated.ts";

/** What `verify` and `extract` print. */
export const sealSentences: Translated<typeof english> = {
  "cli/verify-not-read": "{$file}の{$line :integer}行目を読み取れません：{$why}。",
  "cli/verify-no-key": "「{$key}」はハブの鍵ではありません。ハブの起動画面に示される43文字です。",
  "cli/verify-no-code": "「{$code}」はコードではありません。3文字ずつ区切った12文字です。",
  "cli/verify-source": "発信元",
  "cli/verify-by": "参加者",
  "cli/verify-admitted": "{$name}、{$role}",
  "cli/verify-verdict": "結果",
  "cli/verify-entries": "エントリー",
  "cli/verify-sealed": "封印済み",
  "cli/verify-behind": "以後",
  "cli/verify-finding": "{$source}：{$what}。",
  "cli/verify-finding-at": "{$source}、番号 {$number :integer}：{$what}。",
  "cli/verify-checkpoint":
    "チェックポイント {$code}、エントリー {$entries :integer}件、{$by}（{$trust}）：{$state}。",
  "cli/verify-code":
    "ここのエントリー全{$entries :integer}件：コード {$code}、ルート {$root}、順序 {$order}。",
  "cli/verify-spelled": "読み上げ：{$spelled}。",
  "cli/verify-hub": "{$source}の鍵：{$key}。",
  "cli/verify-extract-checkpoint": "{$by}のチェックポイント（{$trust}）：コード {$code}、ルート {$root}。",
  "cli/extract-nothing": "{$file}から選ばれたエントリーがないため、何も書いていません。",
  "cli/extract-choose":
    "取り出すものを--stepまたは--kindで指定してください。すべての抜粋はログそのものです。",
  "cli/extract-no-checkpoint":
    "{$file}に、一致するハブのチェックポイントがありません。抜粋を証明するものがありません。",
  "cli/extract-behind":
    "選ばれたエントリーのうち{$count :integer}件が、どのチェックポイントにも含まれていないため、何も書いていません。ハブが次のチェックポイントを作ってから、ログを取り直してください。",
  "cli/extract-made": "{$file}：エントリー {$chosen :integer}件が全文、{$left :integer}件を除外。",
  "cli/verify-same": "指定されたコードと一致しました。エントリー {$entries :integer}件のコードです。",
  "cli/verify-differs":
    "指定されたコードは、このログのものではありません。第{$groups :list}組が異なります。聞き違いがあったか、相手のエントリーが異なります。",
};
