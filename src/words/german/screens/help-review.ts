import type { helpOfReviewWords as english } from "../../english/screens/help-review.ts";
import type { Translated } from "../../translated.ts";

/** The help of the review. */
export const helpOfReviewWords: Translated<typeof english> = {
  "guide/review": "Hilfe: die Auswertung",
  "guide/review-pairs":
    "Die Bilder legen das Geplante neben das Ausgeführte. Jedes Zeichen ist neben seinem Bild erklärt, und die Tabellen darunter geben dasselbe in Zahlen.",
  "guide/review-drift":
    "Zeitversatz ist, wie weit das Ende eines Schritts hinter dem Plan lag (+) oder ihm voraus (−).",
  "guide/review-deviations":
    "Eine Abweichung ist, was anders erledigt wurde als geplant: ein Überspringen, eine andere Reihenfolge, ein Wert außerhalb der Grenzwerte, etwas, das nie kam. Sie gibt niemandem die Schuld.",
  "guide/review-delay":
    "„Woher der Rückstand kam“ geht Schritt für Schritt die Kette entlang, die das Ende bestimmte: längere oder kürzere Arbeit, und Warten, mit Angabe auf wen oder was.",
  "guide/review-tables":
    "Planänderungen, Bestätigungen, Kontrollen, Messwerte, Vorräte im Verlauf, Entscheidungen, wieder geöffnete Schritte, berichtigte Gegenstände und Meldungen haben je eine Tabelle, mit Zeit und Urheber. Eine Zeile mit „fehlt“ oder „nicht durchgeführt“ kam nie. Geplant ist immer der Plan beim Öffnen des Außeneinsatzes; jede Planänderung sagt, was sie an Ende und Reserve geändert hat.",
  "guide/review-surprises":
    "Die Überraschungen einer abgeschlossenen Probe stehen neben dem, was ihr Trainer erwartete: wann jede kam, der erste Eintrag, der zeigt, dass jemand sie bemerkt hat, was getan wurde, was es kostete. Noten gibt es nicht.",
  "guide/review-comments":
    "Ein Kommentar steht als Notiz im Protokoll, auch nachdem der Außeneinsatz abgeschlossen ist, und ändert keine Zahl.",
  "guide/review-log":
    "Alles hier ist aus dem Protokoll berechnet, wie es eingetragen wurde, und nichts ist hinzugefügt. Der Plan ist der der Prozedur, mit der der Außeneinsatz geöffnet wurde.",
  "guide/review-starts":
    "Ein Tippen je Schritt sagt, wann er endete. Wo niemand den Beginn eingetragen hat, gilt der Moment, von dem an Personen, Reihenfolge und Zeitfenster ihn zuließen.",
  "guide/review-clocks":
    "Zeiten kommen von den Uhren der Geräte. Wo eine Uhr mit der des Hubs verglichen wurde, sagt die Tabelle der Uhren, um wie viel sie abwich.",
  "guide/review-open":
    "Solange der Außeneinsatz nicht abgeschlossen ist, ist dies die Auswertung bisher: Was noch nicht erledigt ist, ist keine Abweichung.",
  "guide/review-wrong":
    "Ein falscher Eintrag wird auf der Seite „Begleiten“ zurückgenommen oder berichtigt, und beide bleiben im Protokoll: Nichts wird je gelöscht.",
  "guide/review-record":
    "„Ist das Protokoll, wie es eingetragen wurde?“ prüft die Siegel der Geräte. Vom besten zum schlechtesten: lückenlos, unversehrt, teilweise verbürgt, abgeschnitten, gegabelt, gebrochen; das schlechteste Gerät bestimmt das Urteil. Alte Protokolle haben keine Siegel; das ist kein Fehler.",
  "guide/review-record-how":
    "Ein schneller Blick nimmt je Folge von Einträgen ein Siegel, das für die davor bürgt; der volle braucht etwa eine Millisekunde je Eintrag, auf einem langsamen Tablet mehr. Nur ein Hub, dessen Schlüssel Sie hier eingegeben haben, kann für Geräte bürgen.",
  "guide/review-voice-code":
    "Der Sprechcode steht für alle Einträge und ihre Reihenfolge. Zwei Standorte, die einander denselben Code vorlesen, haben dasselbe; wo Codes abweichen, werden die abweichenden Gruppen genannt.",
  "guide/review-unsound":
    "Wenn ein Protokoll abgeschnitten, gegabelt oder gebrochen ist: Bewahren Sie jede Kopie auf, wie sie ist, exportieren Sie das Protokoll von jedem Gerät und Hub, und vergleichen Sie sie. Die Auswertung oben ist weiterhin die des Protokolls, wie es hier ist.",
  "guide/review-extract":
    "Ein Auszug zeigt anderen einige Einträge ohne den Rest, und jeder mit dem Schlüssel des Hubs kann ihn nachprüfen.",
  "guide/extract": "Hilfe: ein Auszug aus einem Protokoll",
  "guide/extract-what":
    "Ein Auszug zeigt einige Einträge eines Protokolls in voller Länge, jeden mit dem Beweis, dass der Prüfpunkt eines Hubs ihn hatte, und von den anderen nur die Nummern. Er wird aus seiner Datei gelesen und nicht übernommen: Nichts davon wird auf diesem Gerät zu einem Außeneinsatz.",
  "guide/review-export":
    "Exporte sind Dateien für andere: das Protokoll für ein anderes Tetherline, die Tabelle für eine Tabellenkalkulation, das Ereignisprotokoll für Werkzeuge, die XES lesen.",
};
