import type { pastedTableWords as english } from "../../english/screens/write-table.ts";
import type { Translated } from "../../translated.ts";

/** A table pasted from a spreadsheet, and what became of it. */
export const pastedTableWords: Translated<typeof english> = {
  "write/row-without-action": "Die Zeile hat keine Tätigkeit und ist daher kein Schritt.",
  "write/row-without-performer":
    "Weder hier noch darüber ist genannt, wer es ausführt; daher ist die Zeile kein Schritt.",
  "write/row-of-somebody":
    "„{$who}“ gehört nicht zur Crew dieser Prozedur; daher ist die Zeile kein Schritt.",
  "write/row-time-lost": "„{$written}“ ist keine lesbare Zeit; der Schritt hat keine.",
  "write/row-place-lost": "„{$written}“ ist kein Ort dieser Prozedur; der Schritt nennt keinen Ort.",
  "write/row-after-lost": "„{$written}“ ist weder eine Zeile der Tabelle noch ein Schritt der Prozedur.",
  "write/row-after-itself": "Der Schritt kann nicht nach sich selbst kommen.",
  "write/no-steps-in-table": "Keine Zeile der Tabelle lässt sich als Schritt übernehmen.",
  "write/headings-number":
    "nr|nr.|nummer|schritt nr|schrittnr|schrittnummer|id|ref|#|no|number|step no|step number",
  "write/headings-task": "aufgabe|gruppe|abschnitt|block|phase|task|group|section",
  "write/headings-who":
    "wer|durch|von wem|crew|crewmitglied|ausführende|ausführender|ev|who|by|performer|performers|crew member",
  "write/headings-do":
    "tätigkeit|schritt|aktion|handlung|aktivität|beschreibung|was|ablauf|prozedur|do|step|action|activity|description|what|procedure",
  "write/headings-time":
    "zeit|minuten|min|dauer|länge|wahrscheinlich|sekunden|sek|stunden|time|minutes|mins|duration|length|likely|seconds|sec|hours",
  "write/headings-where": "wo|ort|platz|stelle|bei|arbeitsbereich|where|place|location|at|worksite",
  "write/headings-after":
    "nach|vorgänger|kommt nach|hängt ab von|wartet auf|after|predecessor|predecessors|comes after|depends on|waits for",
  "write/fragments-not-yet":
    "Ein Baustein lässt sich einsetzen, sobald die Prozedur keinen Befund der Stufe Fehler hat.",
  "write/table-title": "Schritte aus einer Tabelle",
  "write/table-how":
    "Sehen Sie nach, wofür jede Spalte gehalten wird, und ändern Sie, was falsch geraten ist. Vorher wird nichts eingesetzt.",
  "write/table-task": "Eingefügte Schritte",
  "write/table-column": "Spalte {$number :integer}",
  "write/table-empty": "leer",
  "write/table-unit": "Eine bloße Zahl bei den Zeiten bedeutet",
  "write/unit-minutes": "Minuten",
  "write/unit-seconds": "Sekunden",
  "write/unit-hours": "Stunden",
  "write/use-do": "was getan wird",
  "write/use-who": "wer es ausführt",
  "write/use-time": "wie lange es dauert",
  "write/use-after": "nach welchen Zeilen oder Schritten",
  "write/use-where": "wo",
  "write/use-task": "seine Aufgabe",
  "write/use-number": "seine Nummer",
  "write/use-none": "nicht übernommen",
  "write/table-taken": "{$taken :integer} von {$of :integer} Zeilen werden zu Schritten.",
  "write/table-lost": "Was nicht übernommen werden konnte",
  "write/table-row": "Zeile {$number :integer}",
  "write/table-put":
    ".input {$count :integer} .match $count one {{{$count} Schritt einsetzen}} * {{{$count} Schritte einsetzen}}",
  "write/table-leave": "Lassen",
};
