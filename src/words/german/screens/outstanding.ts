import type { outstandingWords as english } from "../../english/screens/outstanding.ts";
import type { Translated } from "../../translated.ts";

/** What was owed by a step or a watch and is not there. */
export const outstandingWords: Translated<typeof english> = {
  "owed/record-not-taken": "{$record} wurde nicht erfasst",
  "owed/record-out-of-range": "{$record} liegt außerhalb der Grenzwerte",
  "owed/confirmation-not-given": "Bestätigung fehlt: {$crew}",
  "owed/check-not-counted": "Nicht abgezählt: {$list :list}",
  "owed/reason-not-given": "Niemand hat gesagt, warum außer der Reihe erledigt wurde",
  "owed/watch-not-kept": "Nicht durchgeführt seit {$due :clock}: {$watch}",
};
