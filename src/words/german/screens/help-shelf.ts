import type { helpOfShelfWords as english } from "../../english/screens/help-shelf.ts";
import type { Translated } from "../../translated.ts";

/** The help of the shelf. */
export const helpOfShelfWords: Translated<typeof english> = {
  "guide/shelf": "Hilfe: die Ablage",
  "guide/shelf-walk":
    "Ein Außeneinsatz ist eine Durchführung einer Prozedur oder eine Probe davon. Der laufende steht zuerst; „Fortsetzen“ öffnet ihn, wo er war.",
  "guide/shelf-follow":
    "„Begleiten“ öffnet einen Außeneinsatz einer Prozedur. Seine Uhr startet erst, wenn jemand „Uhr starten“ antippt. Bei „Proben“ spielt das Programm die Crew.",
  "guide/shelf-read":
    "„Lesen“ zeigt die Prozedur, wie sie vorbereitet ist, mit Befunden, Plan und Druckansicht.",
  "guide/shelf-join":
    "„Einsatz beitreten“ begleitet einen Außeneinsatz, den jemand anderes leitet, mit einem Code, den die Leitung zeigt.",
  "guide/shelf-bring":
    "Dateien werden ausgewählt, auf der Ablage fallen gelassen oder als Text eingefügt. Ein Protokoll oder eine Sicherung zweimal einzulesen, schadet nicht: Schon bekannte Einträge bleiben, wie sie sind.",
  "guide/shelf-units":
    "„Sprache und Anzeige“ enthält Sprache, Farben, Einheiten und die Wahl, ob UTC mit Datum oder mit dem Tag des Jahres steht. „Einheiten“ zeigt Größen hinter den geschriebenen auch in metrischen oder US-amerikanischen Einheiten. Tragen Sie einen Wert in der Einheit ein, die sein Feld nennt; es gilt, was geschrieben ist.",
  "guide/shelf-facts":
    "Schritte, Crew und geplantes Ende bei einer Prozedur werden auf diesem Gerät aus ihrer Datei berechnet, ohne Umlaufbahn und ohne etwas, das geschehen ist.",
  "guide/shelf-findings":
    "Fehler, Vorsichtshinweise und Empfehlungen sind, was die Prüfung gefunden hat. „Keine Befunde“ bedeutet, dass sie zu Reihenfolge, Orten, Gegenständen und Wortlaut nichts zu sagen hat; das Urteilsvermögen prüft sie nicht.",
  "guide/shelf-room":
    "Die Zeilen am Fuß sagen, wie sicher dieser Browser behält, was hier eingetragen wird, und wie viel Platz noch ist.",
  "guide/shelf-unreadable":
    "Eine Prozedur, die nicht lesbar ist, lässt sich nicht begleiten: „Lesen“ nennt jeden Fehler mit seiner Zeile und was zu tun ist.",
  "guide/shelf-lost":
    "Ein Außeneinsatz, der hier fehlt, ist vielleicht auf einem anderen Gerät: Lesen Sie sein exportiertes Protokoll ein, oder treten Sie ihm über seinen Hub bei. Nichts wird von selbst irgendwohin gesendet.",
  "guide/shelf-remove":
    "„Exportieren und vom Gerät entfernen“ speichert zuerst das Protokoll und entfernt nichts, wenn das Speichern abgebrochen wird. Sichern Sie alles, bevor Sie das Gerät wechseln.",
  "guide/shelf-first":
    "„Übungseinsatz öffnen“ öffnet den Übungseinsatz mit einer Anleitung daneben; angeboten wird er, solange kein Einsatz auf diesem Gerät ist. Später öffnet „Proben“ bei derselben Prozedur einen weiteren.",
};
