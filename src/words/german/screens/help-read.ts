import type { helpOfReadWords as english } from "../../english/screens/help-read.ts";
import type { Translated } from "../../translated.ts";

/** The help of the procedure as prepared. */
export const helpOfReadWords: Translated<typeof english> = {
  "guide/read": "Hilfe: eine Prozedur lesen",
  "guide/read-finding":
    "Ein Befund steht bei dem Schritt, den er betrifft, mit seiner Stufe: Ein Fehler muss vor dem Außeneinsatz behoben werden, ein Vorsichtshinweis verlangt einen Blick, eine Empfehlung kann bleiben. Was aus einem anderen Befund folgt, steht darunter.",
  "guide/read-conditions":
    "„Nur solange“, „Nur in“, „Nicht vor“ und „Nach“ sagen, was vor einem Schritt gelten muss. „Danach“ sagt, was er ändert.",
  "guide/read-branch":
    "„Nur bei“ kennzeichnet die Schritte eines Zweigs. Der Plan hier nimmt für jede Entscheidung das Ergebnis, das die Datei erwartet.",
  "guide/read-outline":
    "Diese Seite zeigt nur die Datei: keinen Beginn, keine Umlaufbahn und nichts, was geschehen ist. Diese wählen Sie auf der Zeitleiste.",
  "guide/read-waits":
    "Ein Warten nennt, auf wen oder was gewartet wird; es folgt aus dem Plan und ist kein Schritt der Datei.",
  "guide/read-no-plan":
    "Wo keine geplante Zeit steht, lässt sich die Prozedur so nicht planen, oder der Schritt hängt an einer Entscheidung. Die Befunde sagen, warum.",
  "guide/read-mend":
    "„Bearbeiten“ führt zur Tabelle, wo sich ein Befund beheben lässt; oder beheben Sie ihn in der Datei mit einem Editor, und lesen Sie sie als weitere Revision wieder ein.",
  "guide/texts":
    "Eine Prozedur kann ihre Texte in mehreren Sprachen haben: „Texte der Prozedur“ wählt eine davon, hier und im Einsatz unter „Mehr“, und eine Taste zeigt sie wie geschrieben und wieder zurück. Die Wahl gilt auf allen Bildschirmen der Prozedur und ihrer Einsätze. „Wie geschrieben“ bei einem Text heißt, dass er in dieser Sprache fehlt, „älterer Text“, dass der Verfasser seinen seither geändert hat.",
};
