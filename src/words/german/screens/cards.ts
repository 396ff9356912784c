import type { cardsWords as english } from "../../english/screens/cards.ts";
import type { Translated } from "../../translated.ts";

/** The cards that are worn on the wrist. */
export const cardsWords: Translated<typeof english> = {
  "cards/wrist-cards": "Armkarten",
  "cards/title": "Armkarten: {$title}",
  "cards/what":
    "Für jedes Crewmitglied außen: die eigenen Schritte, gemeinsame Schritte, Warnhinweise und Eventualfälle, mit denselben Nummern wie auf dem Bildschirm. Drucken Sie in voller Größe (100 %), und schneiden Sie an den Marken. Geplante Zeiten sind wahrscheinliche Zeiten, keine Grenzen.",
  "cards/size": "Größe",
  "cards/size-large": "90 × 122 mm, 4 auf einem Blatt",
  "cards/size-medium": "58 × 122 mm, 6 auf einem Blatt",
  "cards/size-small": "58 × 79 mm, 9 auf einem Blatt",
  "cards/size-own": "eigene Größe",
  "cards/width": "Breite, mm",
  "cards/height": "Höhe, mm",
  "cards/nobody": "In dieser Prozedur arbeitet niemand außen, daher gibt es keine Karten.",
  "cards/no-plan": "Es gibt keinen Plan: Die Karten haben keine Zeiten.",
  "cards/foot": "{$id}, {$revision}, gedruckt {$at :utc form=minute} UTC",
  "cards/task": "{$number :integer} {$title}",
  "cards/get-ahead": "{$number :integer} {$title} (Zusatzaufgabe: nur wenn Zeit bleibt)",
  "cards/contingency": "{$number} {$title}",
  "cards/contingency-when": "{$number} {$title} (wenn: {$when})",
  "cards/planned": "Plan {$at :hour-minute}",
  "cards/with": "mit {$crew}",
  "cards/sheet": "{$crew}, Blatt {$sheet :integer} von {$of :integer}",
  "cards/card": "{$crew}, Karte {$number :integer} von {$of :integer}",
  "cards/number": "{$number :integer} von {$of :integer}",
  "cards/continued": "{$step} von Karte {$card :integer}",
  "cards/goes-on": "{$step} geht weiter: Karte {$card :integer}",
};
