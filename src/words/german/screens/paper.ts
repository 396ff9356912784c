import type { paperWords as english } from "../../english/screens/paper.ts";
import type { Translated } from "../../translated.ts";

/** Steps that were done while the crew worked from paper, entered afterwards with their times. */
export const paperWords: Translated<typeof english> = {
  "paper/title": "Von Papier eintragen",
  "paper/how":
    "Haken Sie an, was inzwischen erledigt wurde, und schreiben Sie dazu, wann. Alles wird auf einmal mit diesen Zeiten eingetragen, durch {$who}.",
  "paper/owed":
    "Werte und Bestätigungen werden danach bei ihren Schritten eingetragen: Was fehlt, steht unter „Ausstehend“.",
  "paper/clock": "Die Zeiten sind",
  "paper/clock-pet": "PET, Stunden:Minuten",
  "paper/clock-utc": "UTC, Stunden:Minuten",
  "paper/step": "{$number} {$crew}: {$step}",
  "paper/done-at": "Zeit von Schritt {$number}",
  "paper/outcome": "Ergebnis von Schritt {$number}",
  "paper/choose-outcome": "Ergebnis wählen",
  "paper/none":
    "Es gibt keinen Schritt einzutragen: Jeder ist abgeschlossen oder hängt an einer Entscheidung, die nicht getroffen ist.",
  "paper/more":
    ".input {$count :integer} .match $count one {{{$count} weiteren Schritt zeigen}} * {{{$count} weitere Schritte zeigen}}",
  "paper/enter":
    ".input {$count :integer} .match $count one {{{$count} Schritt eintragen}} * {{{$count} Schritte eintragen}}",
  "paper/entered":
    ".input {$count :integer} .match $count one {{{$count} Schritt wurde eingetragen.}} * {{{$count} Schritte wurden eingetragen.}}",
  "paper/refused":
    ".input {$count :integer} .match $count one {{Nichts wurde eingetragen: Bei {$count} Schritt steht, warum.}} * {{Nichts wurde eingetragen: Bei {$count} Schritten steht, warum.}}",
  "paper/nothing-ticked": "Nichts ist angehakt.",
  "paper/not-open":
    "Dieser Schritt ist schon abgeschlossen oder wird nach den getroffenen Entscheidungen nicht ausgeführt.",
  "paper/no-time":
    "Schreiben Sie, wann er erledigt wurde: Stunden:Minuten wie 1:05, oder mit Sekunden 1:05:30.",
  "paper/before-zero": "Das ist vor dem Start der Uhr um {$zero :utc form=time-second} UTC.",
  "paper/in-future": "Das ist später als jetzt, PET {$now :clock} oder {$utc :utc form=time-second} UTC.",
  "paper/needs-outcome": "Wählen Sie das Ergebnis.",
  "paper/hangs-on":
    "Er folgt auf Schritt {$number} ({$step}), dessen Ergebnis nicht das erwartete war: Tragen Sie zuerst jenen ein und dann diesen.",
  "paper/after-open":
    "Er folgt auf Schritt {$number} ({$step}), der nicht erledigt ist: Haken Sie auch jenen an. Wenn er wirklich außer der Reihe erledigt wurde, öffnen Sie diesen Schritt in der Liste, und geben Sie an, warum.",
  "paper/after-later":
    "Er folgt auf Schritt {$number} ({$step}), und der wurde später erledigt, bei PET {$at :clock}.",
};
