import type { helpOfWriteWords as english } from "../../english/screens/help-write.ts";
import type { Translated } from "../../translated.ts";

/** The help of the screen on which a procedure is written. */
export const helpOfWriteWords: Translated<typeof english> = {
  "guide/write": "Hilfe: eine Prozedur schreiben",
  "guide/write-table":
    "Die Tabelle hat Aufgaben und Schritte in Lesereihenfolge. Pfeiltasten gehen von Zelle zu Zelle, die Eingabetaste bearbeitet, Esc lässt alles, wie es war. Einfg beginnt einen Schritt, Umschalt mit Einfg eine Aufgabe: die Eingabetaste geht weiter zu seiner Zeit und dann zum nächsten Schritt, Tab geht durch Wer, Zeit und das, worauf er folgt, etwa 1.3 + 5. Alt mit Pfeil nach oben oder unten verschiebt die Zeile, die Umschalttaste mit Pfeil nach oben oder unten wählt mehr aus, Entf nimmt heraus. Schaltflächen tun dasselbe.",
  "guide/write-beside":
    "Neben der Tabelle steht alles über die gewählte Zeile. Ein Feld zählt, sobald Sie es verlassen oder die Eingabetaste drücken.",
  "guide/write-link":
    "Verknüpfen: Wählen Sie einen Schritt, drücken Sie „Verknüpfen“, geben Sie ein, wie viel Zeit dazwischen vergehen muss, und tippen Sie in der Tabelle oder auf der Zeitleiste auf den Schritt, der vorher kommt. Mit Tasten: Gehen Sie hin und drücken Sie die Eingabetaste, oder wählen Sie ihn daneben. Esc beendet es.",
  "guide/write-joint":
    "Gemeinsamer Schritt: Wählen Sie einen Schritt, drücken Sie „Gemeinsamer Schritt“, und tippen Sie die Stränge in seiner Zeile an; sie sagen, wer dann beteiligt ist oder nicht mehr. Die Rufzeichen daneben oder unter „Wer“ tun dasselbe.",
  "guide/write-drag":
    "Der Griff rechts an einer Zeile verschiebt sie und was mit ihr ausgewählt ist: Eine Linie zeigt, wohin. Mit Esc oder beim Loslassen neben der Tabelle bleibt alles, wie es war.",
  "guide/write-timeline":
    "Die Zeitleiste zeigt den Plan des Geschriebenen. Ein Tippen auf einen Balken wählt seinen Schritt aus; während ein Schritt verknüpft wird, ist es der, der vorher kommt.",
  "guide/write-map":
    "Unter „Listen“ haben die Orte eine Karte: Sie können sie verschieben, zwei durch einen Weg verbinden oder einen neuen einsetzen. Die Länge eines Wegs wird nach den Lagen gemessen; seine Zeit geben Sie an.",
  "guide/write-offers":
    "„Dann nicht gehalten oder zur Hand“ und „kein Weg dorthin“ folgen aus dem Plan in dem Moment, in dem der Schritt beginnt. Sie lassen sich trotzdem wählen und sind dann Befunde.",
  "guide/write-undo":
    "Jede Bearbeitung wird als Ganzes rückgängig gemacht, bis zu 500, auch nachdem die Seite neu geladen wurde.",
  "guide/write-figures":
    "Ende, Reserve und die Chance, im Zeitlimit zu bleiben, folgen jeder Bearbeitung. Bis dahin sagt die Zeile, dass sie von vorher sind.",
  "guide/write-kept":
    "Was Sie schreiben, ist sofort auf diesem Gerät. Eine Revision wird mit Namen und Grund gespeichert, steht neben den früheren und lässt sich aus der Ablage begleiten.",
  "guide/write-two":
    "Wo dasselbe Manuskript auf zwei Seiten offen ist, wird die später schreibende darauf hingewiesen; nichts wird überschrieben, bis jemand entscheidet.",
  "guide/write-lost":
    "„Auf diesem Gerät nicht gespeichert“ bedeutet, dass der Speicher des Geräts nicht verwendbar ist: Speichern Sie die Datei, bevor Sie die Seite verlassen.",
  "guide/write-languages":
    "„Sprachen“ bei den Listen stellt jeden Text neben seinen Text in einer anderen Sprache. Die Eingabetaste übernimmt das Getippte und geht zur nächsten Zeile; „Er gilt noch“ sagt von einem älteren Text, dass er bleiben kann.",
};
