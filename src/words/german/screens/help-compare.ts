import type { helpOfCompareWords as english } from "../../english/screens/help-compare.ts";
import type { Translated } from "../../translated.ts";

/** The help of comparing and merging. */
export const helpOfCompareWords: Translated<typeof english> = {
  "guide/compare": "Hilfe: vergleichen",
  "guide/compare-changes":
    "„Was sich geändert hat“ nennt jede Änderung mit ihrer Aufgabe. Ein Schritt wird an seiner id erkannt: Einer mit einer neuen id gilt als herausgenommen und hinzugefügt.",
  "guide/compare-flag":
    "In den Zeitleisten kennzeichnet eine Fahne am Anfang eines Balkens einen geänderten Schritt; beide haben denselben Maßstab.",
  "guide/compare-choose":
    "Oben werden zwei Revisionen gewählt. Eine Datei wird verglichen, ohne in die Ablage zu kommen, und ist mit ihrer Seite vergessen.",
  "guide/compare-print":
    "Die gedruckte Seite ist die spätere Revision, mit einem Balken am Rand neben jedem geänderten Schritt.",
  "guide/compare-merge":
    "Wählen Sie zum Zusammenführen die Revision, aus der beide entstanden sind. Was nur eine von ihnen geändert hat, wird übernommen. Wo beide dasselbe geändert haben, wird nichts übernommen, bis Sie wählen.",
  "guide/compare-effect":
    "Beide werden wie erwartet geplant, ohne Zusatzaufgaben, mit demselben Beginn und Licht. Ein Befund ist derselbe, wenn er dasselbe sagt.",
  "guide/compare-not-there":
    "Eine Revision, die nicht auf diesem Gerät ist, lässt sich nicht vergleichen: Lesen Sie ihre Datei ein. Zusammenführen ist nur mit der Revision richtig, aus der beide wirklich entstanden sind; eine andere bringt zurück, was herausgenommen war.",
};
