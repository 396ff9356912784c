import type { fitWords as english } from "../../english/screens/fit.ts";
import type { Translated } from "../../translated.ts";

/** What still fits under the limit: the panel on the follow screen and on the timeline of a plan. */
export const fitWords: Translated<typeof english> = {
  "fit/title": "Was noch passt",
  "fit/tool": "Spät dran?",
  "fit/in-time": "Rechtzeitig bedeutet",
  "fit/by-chance": "neun von zehn Stichproben sind bis zum Zeitlimit erledigt",
  "fit/by-likely": "nach wahrscheinlichen Zeiten erledigt, gleich mit welcher Chance",
  "fit/working": "Es wird gesucht, was passt …",
  "fit/failed":
    "Was passt, konnte hier nicht berechnet werden. Schließen Sie den Bereich, und fragen Sie noch einmal.",
  "fit/from": "Ab PET {$now :clock}, Zeitlimit {$limit :clock}.",
  "fit/from-no-limit": "Ab PET {$now :clock}. Die Prozedur hat kein Zeitlimit, daher passt alles.",
  "fit/proven":
    "Nachweislich das Beste: Nichts, was passt, hat mehr Nutzen ({$tried :integer} Auswahlen betrachtet).",
  "fit/no-choice": "Es passt. Es gibt keine Zusatzaufgabe mehr zu wählen.",
  "fit/best-found":
    "Das Beste bisher: Nutzen {$worth :number maximumFractionDigits=2}; nichts, was passt, hat mehr Nutzen als {$bound :number maximumFractionDigits=2} ({$tried :integer} Auswahlen betrachtet).",
  "fit/no-plan": "Passt nicht: Für die unverzichtbare Arbeit lässt sich von hier aus kein Plan machen.",
  "fit/never":
    "Passt unter keinem Zeitlimit: Zu oft passt ein Schritt der unverzichtbaren Arbeit in kein Zeitfenster.",
  "fit/short": "Passt nicht: Schon für die unverzichtbare Arbeit fehlen {$time :length}.",
  "fit/without-any": "Keine Zusatzaufgabe",
  "fit/keep-to-plan": "Beim Plan bleiben, ohne jede Zusatzaufgabe",
  "fit/with": "{$tasks :list} (Nutzen {$worth :number maximumFractionDigits=2})",
  "fit/fewest": "Lässt von allen passenden Auswahlen die wenigsten Zusatzaufgaben weg.",
  "fit/without": "Weggelassen: {$tasks :list}",
  "fit/in-time-share": "Rechtzeitig",
  "fit/amend": "Ansehen, was der Plan damit ergäbe",
  "fit/share": "{$share :chance} (± {$error :number maximumFractionDigits=1} Prozentpunkte)",
  "fit/windows": "Die Schritte brauchen {$windows :list}.",
  "fit/left": "Am Ende nicht, wie es sein sollte",
  "fit/again": "Von jetzt an neu fragen",
  "fit/leave-out": "Unverzichtbare Arbeit weglassen",
  "fit/leave-out-how":
    "Nichts Unverzichtbares wird weggelassen, wenn Sie es nicht hier anhaken. Von einer angehakten Aufgabe zählt nichts mehr.",
  "fit/how":
    "Hier wird nichts geändert. Das Ende gilt nach wahrscheinlichen Zeiten; „rechtzeitig“ ist der Anteil der Stichproben dieser Suche, die bis zum Zeitlimit erledigt sind. Der Nutzen ist die Zahl aus der Datei, 1, wenn keine angegeben ist.",
};
