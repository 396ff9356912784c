import type { outstandingWords as english } from "../../english/screens/outstanding.ts";
import type { Translated } from "../../translated.ts";

/** What was owed by a step or a watch and is not there. */
export const outstandingWords: Translated<typeof english> = {
  "owed/record-not-taken": "{$record}の記録なし",
  "owed/record-out-of-range": "{$record}が許容範囲外",
  "owed/confirmation-not-given": "{$crew}の確認なし",
  "owed/check-not-counted": "照合なし：{$list :list}",
  "owed/reason-not-given": "順序外で完了した理由の入力なし",
  "owed/watch-not-kept": "{$due :clock}から未実施：{$watch}",
};
