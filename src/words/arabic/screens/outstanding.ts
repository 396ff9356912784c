import type { outstandingWords as english } from "../../english/screens/outstanding.ts";
import type { Translated } from "../../translated.ts";

/** What was owed by a step or a watch and is not there. */
export const outstandingWords: Translated<typeof english> = {
  "owed/record-not-taken": "{$record}: لم يُؤخذ القياس",
  "owed/record-out-of-range": "{$record}: خارج حدوده",
  "owed/confirmation-not-given": "لم يؤكدها {$crew}",
  "owed/check-not-counted": "لم يُجرد: {$list :list}",
  "owed/reason-not-given": "لم يبيّن أحد لماذا أُنجزت خارج الترتيب",
  "owed/watch-not-kept": "لم يُجرَ منذ {$due :clock}: {$watch}",
};
