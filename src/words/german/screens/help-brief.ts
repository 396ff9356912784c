import type { helpOfBriefWords as english } from "../../english/screens/help-brief.ts";
import type { Translated } from "../../translated.ts";

/** The page of help of the briefing. */
export const helpOfBriefWords: Translated<typeof english> = {
  "guide/brief": "Das Briefing",
  "guide/brief-play":
    "Karte, Bildtext und der Streifen der Zeitleiste werden zusammen abgespielt, mit dem 1- bis 120-fachen Tempo des Außeneinsatzes. Die Schaltflächen gehen zum nächsten oder vorigen Schritt und zur nächsten oder vorigen Aufgabe; Schieberegler und Streifen gehen zu jedem Zeitpunkt.",
  "guide/brief-keys":
    "Mit der Tastatur: Die Leertaste spielt ab und hält an, Pfeil links und rechts gehen schrittweise, Bild auf und Bild ab gehen aufgabenweise.",
  "guide/brief-audience":
    "„Fenster fürs Publikum“ öffnet ein zweites Fenster für einen zweiten Bildschirm, das zeigt, was Sie zeigen. Ihr eigenes Fenster hat dann Ihre Notizen, was als Nächstes kommt, die verbleibende Zeit und die nächsten Warnhinweise. Das Fenster sagt, wenn Ihres geschlossen ist.",
  "guide/brief-quiz":
    "Mit eingeschaltetem Quiz hält das Briefing vor einem gemeinsamen Schritt an und fragt, wer wo wartet und was alle bei sich haben. Nichts wird bewertet oder gespeichert.",
  "guide/brief-spoken":
    "Gesprochene Bildtexte benutzen nur eine Stimme dieses Geräts, wo es eine hat. Der geschriebene Bildtext gilt dann je Aufgabe.",
  "guide/brief-paper":
    "Die Bildfolge wird auf A4 und Letter im Querformat gedruckt. Die Datei kann jeder bekommen: Sie läuft ohne dieses Programm und ohne Netz.",
  "guide/brief-figures":
    "Alles Gezeigte ist der Plan, nach wahrscheinlichen Zeiten, oder der Außeneinsatz, wie er eingetragen wurde; über 60× gelten Bildtexte je Aufgabe, da Schritte zum Lesen zu schnell vorbeigehen.",
  "guide/brief-flown":
    "Von der Auswertung aus zeigt das Briefing, was geschehen ist, bis zum letzten Eintrag oder bis jetzt.",
  "guide/brief-trouble":
    "Ist ein Ort nicht auf der Karte, sagt die Prozedur nicht, wo jemand ist. Fehlen Tag und Nacht, wählen Sie Licht und Beginn auf der Zeitleiste des Plans.",
};
