import type { writeWords as english } from "../../english/screens/write.ts";
import type { Translated } from "../../translated.ts";

/** Why something cannot be done to a procedure that is being written. */
export const writeWords: Translated<typeof english> = {
  "write/no-procedure": "Die Prozedur hätte keine lesbare Form.",
  "write/no-row": "Wählen Sie zuerst eine Aufgabe oder einen Schritt.",
  "write/nothing-chosen": "Wählen Sie zuerst einen Schritt.",
  "write/last-task": "Eine Prozedur braucht mindestens eine Aufgabe.",
  "write/tasks-or-steps": "Wählen Sie entweder ganze Aufgaben oder einzelne Schritte desselben Teils.",
  "write/beside-itself": "Zeilen lassen sich nicht neben sich selbst verschieben.",
  "write/at-the-end": "Das steht schon am Ende.",
  "write/at-the-beginning": "Das steht schon am Anfang.",
  "write/join-several": "Wählen Sie zum Zusammenfügen zwei oder mehr Schritte.",
  "write/join-neighbours":
    "Nur Schritte, die in einer Aufgabe aufeinander folgen, lassen sich zusammenfügen.",
  "write/join-people": "Nur Schritte derselben Personen lassen sich zusammenfügen.",
  "write/join-conditions": "Nur Schritte mit denselben Bedingungen lassen sich zusammenfügen.",
  "write/join-places":
    "Nur Schritte am selben Ort lassen sich zusammenfügen, und außer dem letzten kein Ortswechsel.",
  "write/join-one-only":
    "Mehr als einer von ihnen hat eine Bestätigung, eine Entscheidung, einen Anschlagpunkt, einen Briefing-Text, eine Zeitgrenze oder andere mögliche Ausführende; oder ein späterer braucht einen Zustand. Nehmen Sie das zuerst heraus.",
  "write/join-records": "Zwei ihrer Messwerte haben denselben Namen. Benennen Sie zuerst einen um.",
  "write/no-rows-in-text": "Im eingefügten Text sind weder Schritte noch Aufgaben.",
  "write/nothing-wanted": "Geben Sie zuerst ein, was gesucht wird.",
  "write/not-found": "„{$text}“ steht in keinem Text der Zeilen.",
  "write/link-steps": "Wählen Sie einen Schritt und den Schritt, nach dem er kommt.",
  "write/link-itself": "Ein Schritt kann nicht nach sich selbst kommen.",
  "write/link-ring":
    "„{$step}“ kann nicht nach „{$other}“ kommen: Beide würden dann aufeinander warten, und niemand könnte weitermachen.",
  "write/way-places": "Wählen Sie zwei Orte dieser Prozedur.",
  "write/way-to-itself": "Ein Weg verbindet zwei Orte; wählen Sie einen anderen.",
  "write/way-there": "Ein Weg verbindet „{$one}“ und „{$other}“ bereits.",
  "write/way-needs-length": "Geben Sie an, wie lang der Weg ist, in Metern.",
  "write/nobody": "Jemand muss den Schritt ausführen: Fügen Sie zuerst ein weiteres Crewmitglied hinzu.",
  "write/hand-over-itself": "Gebende und nehmende Person müssen zwei verschiedene sein.",
  "write/not-held": "{$crew} hält {$item} in diesem Moment des Plans nicht.",
};
