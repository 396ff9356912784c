import type { helpWords as english } from "../../english/screens/help.ts";
import type { Translated } from "../../translated.ts";

/** What the help of several screens says alike. */
export const helpWords: Translated<typeof english> = {
  "guide/marks": "Was die Zeichen bedeuten",
  "guide/figures": "Woher die Zahlen kommen",
  "guide/doing": "Was sich hier tun lässt",
  "guide/trouble": "Wenn etwas fehlt oder nicht stimmt",
  "guide/advice": "Was es nicht ist",
  "guide/advises":
    "Tetherline berät und ordnet nie etwas an. Flugregeln, örtliche Vorschriften und zugelassene Praxis entscheiden, und wo die Anzeige von ihnen abweicht, haben sie recht. Halten Sie die gedruckte Prozedur bereit.",
  "guide/offline": "Diese Hilfe ist auf dem Gerät gespeichert und braucht kein Netz.",
  "guide/strand":
    "Eine Linie an der Liste entlang ist ein Strang: ein Crewmitglied. Ihre Strichelung sagt, wer es ist, und die Beschriftung steht oben. Die erste Person außen hat eine durchgezogene Linie, die zweite lange Striche, die erste Person innen kurze, die erste am Boden weite.",
  "guide/bead":
    "Eine Perle auf einem Strang ist ein Schritt dieses Crewmitglieds: leer, solange er noch kommt, gefüllt, sobald er erledigt ist.",
  "guide/knot":
    "Ein Knoten ist ein gemeinsamer Schritt: Die Stränge aller Beteiligten laufen dort zusammen, und er beginnt, wenn alle da sind.",
  "guide/perhaps":
    "Eine gestrichelte Perle oder ein gestrichelter Knoten ist ein Schritt, der übersprungen wurde oder nur bei einem bestimmten Ergebnis einer Entscheidung ausgeführt wird.",
  "guide/alert-words":
    "WARNUNG, VORSICHT und HINWEIS stehen vor der Tätigkeit ihres Schritts. Sie unterscheiden sich durch Wort und Rand ebenso wie durch Farbe.",
  "guide/critical":
    "Kritisch bedeutet, dass der Schritt auf der Kette liegt, die das Ende bestimmt: Jede Verzögerung verschiebt das Ende.",
  "guide/slack": "Pufferzeit ist, wie viel später ein Schritt enden kann, bevor sich das Ende verschiebt.",
  "guide/planned-times":
    "Geplante Zeiten folgen aus den wahrscheinlichen Zeiten der Datei, der Reihenfolge, den Routen und den Zeitfenstern. Wo keine Sekunden stehen, sind sie auf die Minute abgeschnitten.",
  "guide/margin": "Reserve ist das Zeitlimit der Prozedur weniger das Ende. Ohne Zeitlimit gibt es keine.",
  "guide/share":
    "Ein Prozentsatz im Zeitlimit zählt Stichproben: Die Zeit jedes Schritts wird aus der PERT-Beta-Verteilung zwischen unterer und oberer Zeit gezogen, immer mit demselben Startwert, damit jedes Gerät dasselbe sagt.",
};
