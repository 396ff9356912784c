import type { helpOfTimelineWords as english } from "../../english/screens/help-timeline.ts";
import type { Translated } from "../../translated.ts";

/** The help of the timeline, of a plan and of a walk. */
export const helpOfTimelineWords: Translated<typeof english> = {
  "guide/timeline": "Hilfe: die Zeitleiste",
  "guide/timeline-lanes":
    "Jede Reihe ist ein Crewmitglied, und die Zeit läuft nach rechts in PET. Der Hintergrund zeigt Tag, Nacht und Zeitfenster, wo sie bekannt sind.",
  "guide/timeline-shapes":
    "Was jede Form bedeutet, steht unter dem Bild. „Als Tabelle“ gibt dasselbe in Zahlen.",
  "guide/timeline-waits":
    "Eine schraffierte Strecke ist ein Warten: Ein Tippen auf den Schritt dahinter zeigt, auf wen oder was gewartet wird.",
  "guide/timeline-now":
    "Während ein Außeneinsatz läuft, kennzeichnet eine Linie jetzt: Was davor liegt, ist erledigt; was dahinter liegt, ist Prognose.",
  "guide/timeline-forecast":
    "Die Prognose behält, was erledigt ist, und plant den Rest nach wahrscheinlichen Zeiten von jetzt an. Ein Schritt in Arbeit endet bei seinem Beginn plus der wahrscheinlichen Zeit oder jetzt, je nachdem, was später ist.",
  "guide/timeline-misses":
    "„Was Stichproben verfehlen“ nennt die Zeitfenster, die Stichproben verfehlen, und die Zeiten, bis zu denen oder innerhalb derer sie einen Schritt nicht erledigen, jeweils mit ihrem Anteil an den Stichproben.",
  "guide/timeline-starts":
    "Das Diagramm der Zeiten des Beginns zeigt das Ende für jeden Beginn eines Tages, und als gepunktete Linie die Chance: Darunter stehen die Zahlen des gewählten Beginns.",
  "guide/timeline-light":
    "Tag, Nacht und Kontakt kommen von der gewählten Bahndatei, dem Standort oder der Liste von Zeiten. Bahnelemente werden mit dem Alter ungenauer: Sehen Sie auf ihr Datum.",
  "guide/timeline-what-if":
    "Ein Versuch ändert nichts, bis er gespeichert ist; gespeichert ist er eine weitere Revision in der Ablage. Die Datei, aus der er kam, bleibt, wie sie ist.",
  "guide/timeline-split":
    "„Beste Aufteilung“ sucht, wer was in welcher Reihenfolge tun sollte, damit das Ende am frühesten kommt, soweit die Prozedur eine Wahl lässt. Der Plan bleibt, wie er ist, bis Sie das Angebotene als Revision speichern. „Beweisen“ sucht einen Beweis dafür, mit einem Teil der App, der dann geladen wird und bleibt.",
  "guide/timeline-leaves":
    "„Plan mitnehmen“ gibt den Plan als Tabelle, als Arbeitsmappe mit einem Raster aus Crew und Zeit und einer Liste, und als Poster auf A3 oder Tabloid aus. Was darin geändert wird, kommt nicht in die Prozedur zurück.",
  "guide/timeline-fragments":
    "„Bausteine“ setzt einige wiederverwendete Schritte oder Aufgaben ein, mit ausgefüllten Platzhaltern, und speichert das Ergebnis als Revision. Eingesetzte Schritte merken sich ihren Baustein, sodass eine spätere Revision davon angeboten werden kann.",
  "guide/timeline-none":
    "Ohne Zeitleiste lässt sich die Prozedur nicht planen: Die Gründe stehen an ihrer Stelle. Ohne Tag und Nacht wählen Sie eine Bahndatei oder einen Standort.",
};
