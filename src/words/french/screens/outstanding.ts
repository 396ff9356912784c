import type { outstandingWords as english } from "../../english/screens/outstanding.ts";
import type { Translated } from "../../translated.ts";

/** What was owed by a step or a watch and is not there. */
export const outstandingWords: Translated<typeof english> = {
  "owed/record-not-taken": "{$record} : mesure non prise",
  "owed/record-out-of-range": "{$record} : hors des limites",
  "owed/confirmation-not-given": "{$crew} ne l’a pas confirmé",
  "owed/check-not-counted": "Non pointé : {$list :list}",
  "owed/reason-not-given": "Personne n’a dit pourquoi cela a été fait hors ordre",
  "owed/watch-not-kept": "Non fait depuis {$due :clock} : {$watch}",
};
