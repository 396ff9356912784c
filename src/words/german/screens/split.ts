import type { splitWords as english } from "../../english/screens/split.ts";
import type { Translated } from "../../translated.ts";

/** Who does what and in which order: the panel on the timeline of a plan, and `split` on the command line. */
export const splitWords: Translated<typeof english> = {
  "split/title": "Beste Aufteilung",
  "split/rest": "Beste Aufteilung des Rests",
  "split/as-of": "Der Außeneinsatz, wie er bei PET {$now :clock} war.",
  "split/moved-on": "Seitdem wurde etwas eingetragen. Fragen Sie neu, bevor Sie es übernehmen.",
  "split/working": "Eine bessere Aufteilung wird gesucht …",
  "split/failed":
    "Eine bessere Aufteilung konnte hier nicht gesucht werden. Schließen Sie den Bereich, und fragen Sie noch einmal.",
  "split/going-on": "Die Suche läuft noch: Dies ist das Beste bisher.",
  "split/stop": "Suche beenden",
  "split/prove": "Beweisen",
  "split/proving": "Ein Beweis wird gesucht …",
  "split/no-solver":
    "Der Beweis braucht einen Teil der App, der noch nicht auf diesem Gerät ist. Fragen Sie mit einer Verbindung zur Herkunft der App neu.",
  "split/second-proven":
    "Ein zweites Mal durch ein Programm gezeigt (Ja-Nein-Entscheidungen: {$choices :integer}).",
  "split/second-open":
    "Ein Programm konnte es in der erlaubten Suche nicht klären (Ja-Nein-Entscheidungen: {$choices :integer}).",
  "split/second-too-large":
    "Es ist zu groß, um als Programm aufgeschrieben zu werden (Ja-Nein-Entscheidungen: {$choices :integer}).",
  "split/now": "Der Plan, wie er ist: Ende {$finish :finish}.",
  "split/proven":
    "Nachweislich das Beste: Ende {$finish :finish}, {$by :advance} früher. Keine Aufteilung dieser Arbeit ist früher abgeschlossen.",
  "split/best-found":
    "Das Beste bisher: Ende {$finish :finish}, {$by :advance} früher. Keine Aufteilung kann noch mehr als {$over :length} früher abgeschlossen sein.",
  "split/kept-proven": "Der Plan kann bleiben: Keine Aufteilung dieser Arbeit ist früher abgeschlossen.",
  "split/kept":
    "Der Plan kann bleiben: Nichts Besseres wurde gefunden. Keine Aufteilung kann mehr als {$over :length} früher abgeschlossen sein.",
  "split/no-choice":
    "Es gibt nichts zu wählen: Kein Schritt sagt, wer ihn sonst ausführen könnte (or), und keine Aufgabe ist in ihrem Platz frei (order).",
  "split/no-plan": "Es gibt keinen Plan, der sich verbessern ließe: Beheben Sie zuerst, was ihn verhindert.",
  "split/step-given": "Schritt {$step} „{$text}“ wird von {$crew :list} ausgeführt statt von {$old :list}.",
  "split/steps-given":
    "Die Schritte {$steps :list} werden von {$crew :list} ausgeführt statt von {$old :list}, alle zusammen, da vom ersten bis zum letzten etwas in einer Hand ist.",
  "split/task-first": "Aufgabe „{$task}“ kommt zuerst.",
  "split/task-behind": "Aufgabe „{$task}“ kommt hinter „{$behind}“.",
  "split/gains": "Ohne diese Änderung wäre der Plan {$time :advance} später abgeschlossen.",
  "split/needed": "Ohne diese Änderung sind die anderen nicht möglich.",
  "split/chain":
    ".input {$count :integer} .match $count one {{Das Ende des Plans hängt an Schritt {$first}; er wird entlastet.}} * {{Das Ende des Plans hängt an einer Kette von {$count} Schritten von {$first} bis {$last}; sie wird entlastet.}}",
  "split/cost": "Was es kostet",
  "split/changed-hands":
    ".input {$count :integer} .match $count 0 {{Kein Schritt wechselt die Ausführenden.}} one {{{$count} Schritt wechselt die Ausführenden.}} * {{{$count} Schritte wechseln die Ausführenden.}}",
  "split/metres": "Alle zusammen gehen {$after :metres} statt {$before :metres}.",
  "split/window-tighter":
    "In „{$window}“ bleiben dem knappsten Schritt {$after :advance} statt {$before :advance}.",
  "split/keep": "Plan behalten",
  "split/save": "Als Revision {$revision} speichern",
  "split/how-rest":
    "Nach wahrscheinlichen Zeiten von da an, ohne Zusatzaufgaben, die niemand begonnen hat. Was fertig oder in Arbeit ist, bleibt, und die Abschlussarbeiten auch. Nichts wird geändert, bis die Leitung eine Änderung einträgt.",
  "split/how":
    "Nach wahrscheinlichen Zeiten, ohne Zusatzaufgaben, Entscheidungen wie erwartet. Nur Schritte, die sagen, wer sie sonst ausführen könnte, wechseln die Ausführenden, und nur Aufgaben mit freiem Platz werden verschoben; Abschlussarbeiten bleiben. Nichts wird geändert, bis Sie eine Revision speichern.",
};
