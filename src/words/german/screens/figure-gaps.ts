import type { figureGapWords as english } from "../../english/screens/figure-gaps.ts";
import type { Translated } from "../../translated.ts";

/** The figures of a walk that are not known: what is missing, and why it can or cannot be set while the walk runs. */
export const figureGapWords: Translated<typeof english> = {
  "gap/title": "Nicht bekannt",
  "gap/not-known": "nicht bekannt",
  "gap/set-it": "Warum das nicht bekannt ist und was sich tun lässt",
  "gap/turn-back": "Umkehr",
  "gap/no-limit":
    "Die Prozedur setzt kein Zeitlimit, daher gibt es keine Reserve. Ein Zeitlimit gehört zur Prozedur und lässt sich nicht setzen, während ein Außeneinsatz läuft.",
  "gap/no-forecast":
    "Für den Rest ist keine Prognose möglich: Er passt in kein Zeitfenster mehr, oder Schritte warten aufeinander. Überspringen Sie einen Schritt mit einem Grund, oder schließen Sie den Außeneinsatz ab.",
  "gap/no-way-back":
    "Es lässt sich keine Umkehrzeit angeben, da kein Rückweg zu einem Zufluchtsort bekannt ist oder passt. Orte und Wege gehören zur Prozedur und lassen sich nicht setzen, während ein Außeneinsatz läuft.",
  "gap/no-end-of-supplies":
    "Es lässt sich keine Umkehrzeit angeben: Es gibt kein Zeitlimit, und bei geplantem Verbrauch geht kein Vorrat zu Ende. Zwei Ablesungen im Abstand von mindestens fünf Minuten ergeben einen Verbrauch.",
  "gap/nothing-runs-out":
    "Es lässt sich keine Umkehrzeit angeben: Die Prozedur setzt weder ein Zeitlimit noch Vorräte, und beides lässt sich nicht setzen, während ein Außeneinsatz läuft.",
  "gap/never-read":
    "Nie abgelesen, daher gilt der geplante Verbrauch: {$supplies :list}. Eine Ablesung gibt an, was wirklich da ist.",
  "gap/supply-of": "{$crew} {$supply}",
  "gap/no-light":
    "Die Zeiten von {$windows :list} sind nicht bekannt: Der Außeneinsatz wurde ohne Umlaufbahn und ohne Standort geöffnet. Die Leitung wählt unten eine Quelle für jedes Gerät, oder auf der Zeitleiste, bevor ein Außeneinsatz geöffnet wird.",
  "gap/windows-from-start": "Die Zeiten von {$windows :list} sind bekannt, sobald die Uhr läuft.",
  "gap/not-started":
    "Die Uhr ist nicht gestartet. Bis dahin sind alle Zeiten die des Plans, von PET 0 an gezählt.",
  "gap/enter-reading": "Ablesung eintragen",
  "gap/marker-enters": "Dieses Tablet beobachtet: Wer markiert, trägt Ablesungen ein.",
};
