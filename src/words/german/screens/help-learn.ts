import type { helpOfLearnWords as english } from "../../english/screens/help-learn.ts";
import type { Translated } from "../../translated.ts";

/** The help of learning from walks and of walks compared. */
export const helpOfLearnWords: Translated<typeof english> = {
  "guide/learn": "Hilfe: aus Außeneinsätzen lernen",
  "guide/learn-strip":
    "Jeder Schritt hat einen Streifen: oben, hohl, wo nach dem Plan acht von zehn Außeneinsätzen liegen; unten, gefüllt, wo sie nach Plan und Außeneinsätzen zusammen liegen. Alle Streifen haben denselben Maßstab: Die gestrichelte Linie ist die geplante wahrscheinliche Zeit, die Linien daneben sind halb und doppelt so lang.",
  "guide/learn-marks":
    "Ein gefüllter Punkt ist ein echter Außeneinsatz, ein hohler eine Probe. Ein Pfeil wurde abgebrochen und hätte länger gedauert. Ein Ring liegt weit von den anderen: Er zählt weniger und wird nicht weggelassen.",
  "guide/learn-weight":
    "Ein echter Außeneinsatz hat das Gewicht 1. Alle Proben eines Schritts zusammen haben weniger Gewicht als ein echter Außeneinsatz. „Dünn“ bedeutet, dass ein weiterer Außeneinsatz die Zahlen stark ändern kann.",
  "guide/learn-left-out":
    "Schritte, die innerhalb von fünf Sekunden nacheinander als erledigt angetippt wurden, sagen einzeln nichts, Halte zählen nicht, und ein Schritt, den jetzt andere ausführen oder der anderes bewegt, beginnt neu.",
  "guide/learn-offer":
    "Andere Zahlen werden angeboten, wo mindestens zwei Außeneinsätze etwas über einen Schritt sagen und sich seine wahrscheinliche Zeit um ein Zehntel und eine halbe Minute verschieben würde. Übernehmen Sie, was Sie überzeugt, und speichern Sie es als neue Revision: Die in der Ablage bleibt, wie sie ist.",
  "guide/learn-disagree":
    "„Plan und Belege widersprechen sich“ bedeutet, dass Außeneinsätze viel stärker schwanken als geplant. Öffnen Sie sie, bevor Sie die Zahlen ändern: Der Schritt ist vielleicht zwei verschiedene Dinge.",
  "guide/learn-claims":
    "Diese Zahlen sagen nicht, warum ein Schritt so lange dauerte oder wer schneller ist, und Proben allein sagen nicht, wie schnell ein echter Außeneinsatz ist.",
  "guide/learn-here":
    "Nur Außeneinsätze auf diesem Gerät zählen. Ein Protokoll von anderswo wird in der Ablage eingelesen.",
  "guide/walks": "Hilfe: Außeneinsätze im Vergleich",
  "guide/walks-strips":
    "Jeder Außeneinsatz ist ein Streifen auf einer gemeinsamen Zeitachse: eine Linie je Crewmitglied, dick, wo ein Schritt ausgeführt wurde. Eine Raute kennzeichnet eine Abweichung.",
  "guide/walks-open":
    "Ein Tippen auf einen Streifen öffnet die Auswertung bei diesem Schritt; die Liste der Außeneinsätze unter einem Schritt tut dasselbe.",
  "guide/walks-steps":
    "Ab fünf Außeneinsätzen hat ein Schritt die Punkte, zwischen denen acht von zehn liegen, und den Faktor, um den Zeiten gewöhnlich von der Mitte abweichen. Unter fünf gibt es nur die Außeneinsätze selbst.",
  "guide/walks-order":
    "„Reihenfolge“ betrachtet jedes Paar von Schritten, von denen einer zuerst kommen muss, wo beide erledigt wurden.",
  "guide/walks-groups":
    "Zwei Gruppen werden Schritt für Schritt verglichen. Ein Unterschied wird nur gezeigt, wo Zufall ihn kaum hervorbringen würde, unter Beachtung der Anzahl der Schritte.",
  "guide/walks-forecasts":
    "Die Prognose am Ende jeder Aufgabe wird aus dem Protokoll noch einmal berechnet, wie sie damals gezeigt wurde, und mit dem eingetretenen Ende verglichen.",
};
