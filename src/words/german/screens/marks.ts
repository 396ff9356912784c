import type { marksWords as english } from "../../english/screens/marks.ts";
import type { Translated } from "../../translated.ts";

/** The page of all marks, and its help. */
export const marksWords: Translated<typeof english> = {
  "marks/title": "Alle Zeichen",
  "marks/what": "Jedes Zeichen jedes Bildschirms und was es bedeutet",
  "marks/braid": "Neben einer Liste von Schritten",
  "marks/step": "An einem Schritt",
  "marks/alerts": "Meldungen eines Außeneinsatzes",
  "marks/amended":
    "Ein Schritt, den eine Planänderung betrifft, sagt wie, bis sie auf diesem Gerät gesehen wurde.",
  "marks/notes": "Ein Blatt mit umgeknickter Ecke zählt die Notizen am Schritt.",
  "guide/marks-title": "Hilfe: die Zeichen",
  "guide/marks-page":
    "Jedes Zeichen ist hier von dem gezeichnet, was es auf seinem Bildschirm zeichnet, mit seiner Bedeutung daneben.",
  "guide/marks-hue":
    "Der Farbton steht nie allein: Was sich in der Farbe unterscheidet, unterscheidet sich auch in Form, Strichelung oder durch ein Wort.",
  "guide/marks-themes": "Bei Nacht und in gedämpften Farben bleiben Formen und Strichelungen, wie sie sind.",
  "guide/marks-sample":
    "Der Arbeitsbereich ist der des Übungseinsatzes. Wo er nicht gelesen werden kann, stehen die Sätze ohne Bild.",
  "guide/marks-words":
    "Ein Zeichen, das hier nicht steht, ist keines dieses Programms: Suchen Sie es in dem, was der Verfasser der Prozedur gezeichnet oder geschrieben hat.",
};
