import type { writeMapWords as english } from "../../english/screens/write-map.ts";
import type { Translated } from "../../translated.ts";

/** The map on which places are put, and the pictures of a procedure. */
export const writeMapWords: Translated<typeof english> = {
  "write/map": "Orte auf der Karte",
  "write/map-not-yet":
    "Die Karte lässt sich zeichnen, sobald die Prozedur keinen Befund der Stufe Fehler hat.",
  "write/map-place": "Ort zum Verschieben",
  "write/map-step": "Um wie viel",
  "write/map-metres": "{$metres :metres}",
  "write/map-move": "Ort verschieben",
  "write/map-left": "← Links",
  "write/map-right": "→ Rechts",
  "write/map-up": "↑ Oben",
  "write/map-down": "↓ Unten",
  "write/map-how":
    "Tippen Sie auf einen Ort, um ihn zu wählen, und auf eine freie Stelle, um ihn dorthin zu setzen. Die Schaltflächen verschieben ihn, ebenso die Pfeiltasten, solange eine Schaltfläche den Fokus hat. Höhen werden in seinem Formular eingegeben.",
  "write/map-says":
    ".input {$count :integer} .match $count one {{Eine Karte mit einem Ort, von oben.}} * {{Eine Karte mit {$count} Orten, von oben.}}",
  "write/map-ways": "Wege von „{$place}“",
  "write/map-way": "{$place}: {$length :metres} auf dem Weg, {$straight :metres} geradeaus",
  "write/way-out": "Weg herausnehmen: {$one} – {$other}",
  "write/map-mode": "Was ein Tippen auf die Karte bewirkt",
  "write/map-mode-move": "Orte verschieben",
  "write/map-mode-way": "Weg",
  "write/map-mode-place": "Neuer Ort",
  "write/map-how-way": "Tippen Sie auf die zwei Orte, die der Weg verbindet, oder wählen Sie sie hier.",
  "write/map-how-place":
    "Tippen Sie auf eine freie Stelle: Dort entsteht ein neuer Ort. Sein Name wird in seinem Formular eingegeben.",
  "write/map-place-beside": "Neben „{$place}“ setzen",
  "write/way": "Ein Weg zwischen zwei Orten",
  "write/way-from": "Von",
  "write/way-to": "Nach",
  "write/way-none": "Ort wählen",
  "write/way-length": "Länge des Wegs, m",
  "write/way-measured":
    "{$length :metres} geradeaus zwischen ihnen, nach ihren Lagen. Auf dem Weg kann es mehr sein.",
  "write/way-shorter": "Das ist kürzer als geradeaus zwischen ihnen.",
  "write/way-not-measured": "Das lässt sich nicht messen: Einer von ihnen hat in der Datei keine Lage.",
  "write/way-time": "Nötige Zeit, Minuten",
  "write/way-take": "{$time :length form=second} übernehmen",
  "write/way-take-from":
    "{$time :length form=second} entspricht dem Tempo des langsamsten Wegs dieser Prozedur, {$one} – {$other}.",
  "write/way-no-pace": "Kein Weg dieser Prozedur hat eine Zeit, daher gibt es keinen Anhalt.",
  "write/way-without-time": "Ohne Zeit wird für niemanden dieser Weg geplant.",
  "write/way-put": "Weg einsetzen",
  "write/way-is-in": "Der Weg ist eingesetzt: {$one} – {$other}.",
  "write/no-picture": "Das ist kein Bild, das eine Prozedur enthalten kann: PNG, JPEG, WebP oder SVG.",
  "write/pictures-how":
    "PNG, JPEG, WebP oder SVG, je bis 400 kB und zusammen 3 MB. Schritte nennen die Bilder, die mit ihnen gezeigt werden.",
  "write/map-no-ways": "Kein Weg führt von „{$place}“ weg.",
};
