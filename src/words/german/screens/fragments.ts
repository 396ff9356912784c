import type { fragmentWords as english } from "../../english/screens/fragments.ts";
import type { Translated } from "../../translated.ts";

/** Steps that are used again: what is wrong with a fragment, and the panel that puts one in. */
export const fragmentWords: Translated<typeof english> = {
  "fragment/not-json": "Das ist kein JSON.",
  "fragment/newer": "Die Datei stammt von einer neueren Version des Programms.",
  "fragment/unusable": "Es gibt kein verwendbares „{$key}“.",
  "fragment/blank-doubled": "Zwei Platzhalter heißen „{$blank}“.",
  "fragment/no-such-blank": "Einen Platzhalter „{$blank}“ gibt es nicht.",
  "fragment/time-in-text": "Der Platzhalter „{$blank}“ ist eine Zeit; sie kann nicht in einem Text stehen.",
  "fragment/blank-empty": "„{$label}“ ist noch auszufüllen.",
  "fragment/blank-not-there": "Womit „{$label}“ ausgefüllt ist, steht nicht in dieser Prozedur.",
  "fragment/no-such-place": "Die Stelle, an der er eingesetzt werden soll, ist nicht in dieser Prozedur.",
  "fragment/steps-or-tasks": "Darin stehen entweder Schritte oder Aufgaben.",
  "fragment/tasks-go-behind-task": "Ein Baustein aus Aufgaben kommt hinter eine Aufgabe.",
  "fragments/title": "Bausteine",
  "fragments/how":
    "Ein Baustein sind einige wiederverwendete Schritte oder Aufgaben. Füllen Sie seine Platzhalter aus, geben Sie an, wohin er kommt, und sehen Sie an, was daraus wird: Nichts wird eingesetzt, bevor Sie es sagen.",
  "fragments/which": "Baustein",
  "fragments/name": "{$title}, Rev. {$revision}",
  "fragments/from-file": "Aus einer Datei …",
  "fragments/cannot-be-read": "„{$name}“ ist nicht als Baustein lesbar:",
  "fragments/choose": "– auswählen –",
  "fragments/minutes": "{$label}, in Minuten",
  "fragments/goes": "Er kommt",
  "fragments/behind-step": "hinter {$number} {$action}",
  "fragments/behind-task": "als eigene Aufgabe hinter „{$task}“",
  "fragments/tasks-behind-task": "mit seinen Aufgaben hinter „{$task}“",
  "fragments/put-in": "Einsetzen",
  "fragments/about": "{$fragment} eingesetzt",
  "fragments/offers": "Eingesetzte Bausteine mit einer anderen Revision",
  "fragments/offer":
    "{$fragment}: Revision {$revision} wurde als {$use} eingesetzt; Revision {$newer} ist hier.",
  "fragments/blind":
    "Die eingesetzte Revision ist hier nicht bekannt. Wenn Sie diese Änderungen übernehmen, geht verloren, was seither an diesen Schritten geändert wurde.",
  "fragments/nothing-new": "Nur die Revision würde sich ändern.",
  "fragments/conflicts": "Baustein und Prozedur haben beide dasselbe geändert; nichts ist gewählt:",
  "fragments/take": "Änderungen übernehmen",
  "fragments/take-which": "Änderungen von {$fragment} in {$use} übernehmen",
  "fragments/taken": "{$fragment} im Stand von Revision {$revision}",
};
