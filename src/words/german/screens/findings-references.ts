import type { findingsOfReferencesWords as english } from "../../english/screens/findings-references.ts";
import type { Translated } from "../../translated.ts";

/** What the checker says of ids, references, decisions and times within a file. */
export const findingsOfReferencesWords: Translated<typeof english> = {
  "file/doubled-crew-id": "Die Crew-id „{$id}“ wird zweimal verwendet.",
  "file/doubled-place-id": "Die Orts-id „{$id}“ wird zweimal verwendet.",
  "file/doubled-item-id": "Die Gegenstands-id „{$id}“ wird zweimal verwendet.",
  "file/doubled-window-id": "Die Zeitfenster-id „{$id}“ wird zweimal verwendet.",
  "file/doubled-step-id": "Die Schritt-id „{$id}“ wird zweimal verwendet.",
  "file/doubled-decision-id": "Die Entscheidungs-id „{$id}“ wird zweimal verwendet.",
  "file/doubled-supply-id": "Die Vorrats-id „{$id}“ wird zweimal verwendet.",
  "file/doubled-task-id": "Die Aufgaben-id „{$id}“ wird zweimal verwendet.",
  "file/doubled-contingency-id": "Die Eventualfall-id „{$id}“ wird zweimal verwendet.",
  "file/doubled-watch-id": "Die Kontroll-id „{$id}“ wird zweimal verwendet.",
  "file/doubled-state-id": "Die Zustands-id „{$id}“ wird zweimal verwendet.",
  "file/doubled-picture-id": "Die Bild-id „{$id}“ wird zweimal verwendet.",
  "file/doubled-record-id": "Die Messwert-id „{$id}“ wird zweimal verwendet.",
  "file/no-such-crew-member": "Ein Crewmitglied „{$id}“ gibt es nicht.",
  "file/no-such-crew-member-meant": "Ein Crewmitglied „{$id}“ gibt es nicht. Ist „{$meant}“ gemeint?",
  "file/no-such-place": "Einen Ort „{$id}“ gibt es nicht.",
  "file/no-such-place-meant": "Einen Ort „{$id}“ gibt es nicht. Ist „{$meant}“ gemeint?",
  "file/no-such-item": "Einen Gegenstand „{$id}“ gibt es nicht.",
  "file/no-such-item-meant": "Einen Gegenstand „{$id}“ gibt es nicht. Ist „{$meant}“ gemeint?",
  "file/no-such-window": "Ein Zeitfenster „{$id}“ gibt es nicht.",
  "file/no-such-window-meant": "Ein Zeitfenster „{$id}“ gibt es nicht. Ist „{$meant}“ gemeint?",
  "file/no-such-step": "Einen Schritt „{$id}“ gibt es nicht.",
  "file/no-such-step-meant": "Einen Schritt „{$id}“ gibt es nicht. Ist „{$meant}“ gemeint?",
  "file/no-such-decision": "Eine Entscheidung „{$id}“ gibt es nicht.",
  "file/no-such-decision-meant": "Eine Entscheidung „{$id}“ gibt es nicht. Ist „{$meant}“ gemeint?",
  "file/no-such-supply": "Einen Vorrat „{$id}“ gibt es nicht.",
  "file/no-such-supply-meant": "Einen Vorrat „{$id}“ gibt es nicht. Ist „{$meant}“ gemeint?",
  "file/no-such-state": "Einen Zustand „{$id}“ gibt es nicht.",
  "file/no-such-state-meant": "Einen Zustand „{$id}“ gibt es nicht. Ist „{$meant}“ gemeint?",
  "file/picture-not-of-type":
    "Das Bild „{$id}“ ist laut Angabe vom Typ {$type}, aber sein Inhalt ist von einem anderen.",
  "file/pictures-too-large":
    "Die Bilder haben zusammen {$size :number maximumFractionDigits=2} MB. Höchstens {$most :number} MB werden gelesen.",
  "file/no-such-picture": "Ein Bild „{$id}“ gibt es nicht.",
  "file/no-such-picture-meant": "Ein Bild „{$id}“ gibt es nicht. Ist „{$meant}“ gemeint?",
  "state/no-such-value": "„{$value}“ ist kein Wert des Zustands „{$state}“.",
  "state/no-such-value-meant": "„{$value}“ ist kein Wert des Zustands „{$state}“. Ist „{$meant}“ gemeint?",
  "state/value-twice": "Ein Wert des Zustands „{$state}“ steht zweimal da.",
  "file/route-to-itself": "Eine Route muss von einem Ort zu einem anderen führen.",
  "file/watch-at-once": "Eine Kontrolle muss nach einiger Zeit wiederkehren, nicht sofort.",
  "decision/expected-not-there": "„{$outcome}“ ist keines der Ergebnisse dieser Entscheidung.",
  "decision/outcome-twice": "Ein Ergebnis steht zweimal da.",
  "file/crew-twice": "Ein Crewmitglied ist in diesem Schritt zweimal genannt.",
  "file/limits-crossed":
    "Der kleinste zulässige Wert, {$least :number}, liegt über dem größten, {$most :number}.",
  "order/after-itself": "Ein Schritt kann nicht nach sich selbst kommen.",
  "order/contingency":
    "„{$step}“ gehört zu einem Eventualfall und wird daher vielleicht nie erledigt; nichts außerhalb darf danach kommen.",
  "order/get-ahead":
    "„{$step}“ gehört zu einer Zusatzaufgabe und kann wegbleiben; kein Schritt außerhalb der Aufgabe darf danach kommen.",
  "decision/later":
    "Die Entscheidung „{$decision}“ wird nicht in einem früheren Schritt der Lesereihenfolge getroffen.",
  "decision/no-such-outcome": "„{$outcome}“ ist kein Ergebnis der Entscheidung „{$decision}“.",
  "time/missing":
    "Nur bei einem Ortswechsel darf die Zeit fehlen; geben Sie an, wie lange dieser Schritt dauert.",
  "time/out-of-order": "Die Zeiten dürfen von der unteren über die wahrscheinliche zur oberen nicht fallen.",
  "window/no-spans": "Ein aufgelistetes Zeitfenster braucht seine Zeitspannen.",
  "window/empty-span": "Eine Zeitspanne muss nach ihrem Beginn enden.",
  "custody/inside-itself": "„{$item}“ wäre in sich selbst.",
};
