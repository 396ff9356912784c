import type { linkStateWords as english } from "../../english/screens/link-state.ts";
import type { Translated } from "../../translated.ts";

/** How a link stands, what came of it, and why it fails: said by the link itself, of a tablet and of a hub alike. */
export const linkStateWords: Translated<typeof english> = {
  "link/no-answer": "Es kam keine rechtzeitige Antwort.",
  "link/nothing-heard": "Seit {$seconds :integer} s war nichts zu hören.",
  "link/answer-unfit": "Die Antwort passt nicht zu dem, was gesendet wurde.",
  "link/clock-was-set": "Die Uhr dieses Geräts wurde während des Vergleichs gestellt.",
  "link/not-reached": "Der Hub ist nicht erreichbar.",
  "link/device-refused": "Der Hub hat dieses Gerät abgelehnt.",
  "link/no-hub-here": "Hier ist kein Hub.",
  "link/unknown-hub": "Was hier antwortet, ist kein Hub, den diese App kennt.",
  "link/no-hub": "Was hier antwortet, ist kein Hub.",
  "link/connection-lost": "Die Verbindung zum Hub ist abgerissen.",
  "link/not-the-owners-code": "Das ist nicht der Eigentümercode dieses Hubs: Sehen Sie auf seine Konsole.",
  "link/name-of-another":
    "Der Name dieses Tablets gehört in diesem Außeneinsatz zu einem anderen Schlüssel, als wären seine Daten von einem anderen Tablet kopiert. Exportieren Sie, was nur hier ist, löschen Sie im Browser die Daten dieser Website, und treten Sie als neues Tablet bei.",
  "link/name-taken":
    "Dieses Tablet ist schon im Außeneinsatz, ohne Schlüssel, und der Hub kann nicht erkennen, dass es dasselbe ist. Lassen Sie es von der Leitung aus dem Außeneinsatz entfernen, oder treten Sie mit dem Eigentümercode bei.",
  "link/name-left":
    "Dieses Tablet hat in diesem Außeneinsatz ohne Schlüssel geschrieben und ihn verlassen, daher kann der Hub nicht erkennen, dass es dasselbe ist. Treten Sie mit dem Eigentümercode bei, oder löschen Sie im Browser die Daten dieser Website, und treten Sie als neues Tablet bei.",
  "link/name-elsewhere":
    "Dieses Tablet ist dem Hub der Gegenseite bekannt: Treten Sie dem Außeneinsatz an jenem Hub bei.",
  "link/walk-not-linked": "Dieser Außeneinsatz ist mit keinem Hub verbunden.",
  "link/which-hub": "Geben Sie zuerst an, wo der Hub ist.",
  "link/not-an-address":
    "Das ist keine Adresse eines Hubs. Sie beginnt mit https:// und endet mit dem Port, wie die Konsole des Hubs sie zeigt.",
  "link/not-kept": "Dieses Tablet konnte es nicht speichern: {$why :message}.",
  "link/trouble-here":
    "Dieses Tablet kommt mit dem Hub nicht mit: {$trouble :message}. Es versucht es weiter.",
  "link/reading-anew": "was vom Außeneinsatz gespeichert war, ist weg, und er wird noch einmal gelesen",
  "link/unreadable":
    ".input {$count :integer} .match $count one {{{$count} Eintrag des Hubs fehlt hier: Diese Version der App kann ihn nicht lesen. Aktualisieren Sie die App.}} * {{{$count} Einträge des Hubs fehlen hier: Diese Version der App kann sie nicht lesen. Aktualisieren Sie die App.}}",
  "link/restamped":
    ".input {$count :integer} .match $count one {{{$count} Eintrag wurde nach der Uhr des Hubs eingeordnet, weil die Uhr dieses Tablets vorgegangen ist. Stellen Sie sie richtig.}} * {{{$count} Einträge wurden nach der Uhr des Hubs eingeordnet, weil die Uhr dieses Tablets vorgegangen ist. Stellen Sie sie richtig.}}",
  "link/restamped-by":
    ".input {$count :integer} .match $count one {{{$count} Eintrag wurde nach der Uhr des Hubs eingeordnet, weil die Uhr dieses Tablets {$by :length} vorgeht. Stellen Sie sie richtig.}} * {{{$count} Einträge wurden nach der Uhr des Hubs eingeordnet, weil die Uhr dieses Tablets {$by :length} vorgeht. Stellen Sie sie richtig.}}",
  "link/entered-anew":
    ".input {$count :integer} .match $count one {{{$count} Eintrag wurde unter einer neuen Nummer noch einmal eingetragen, weil der Hub an seiner Stelle einen anderen hatte. Nichts ist verloren.}} * {{{$count} Einträge wurden unter neuen Nummern noch einmal eingetragen, weil der Hub an ihrer Stelle andere hatte. Nichts ist verloren.}}",
  "link/set-aside":
    ".input {$count :integer} .match $count one {{{$count} Eintrag wurde beiseitegelegt und zählt nicht: {$why :message}.}} * {{{$count} Einträge wurden beiseitegelegt und zählen nicht: {$why :message}.}}",
  "link/aside-refused": "der Hub hat das abgelehnt",
  "link/aside-not-an-entry": "der Hub kann solche Einträge nicht lesen",
  "link/aside-other-walk": "der Hub nimmt nur Einträge dieses Außeneinsatzes an",
  "link/aside-other-source": "der Hub nimmt nur an, was auf diesem Tablet gemacht wurde",
  "link/aside-role": "mit der Rolle dieses Tablets dürfen solche Einträge nicht geschrieben werden",
  "link/aside-ahead": "der Hub nimmt keine Einträge an, die der Zeit so weit voraus sind",
  "link/aside-limit": "zu lang für den Hub, oder es ist kein Platz mehr",
  "link/aside-conflict": "der Hub hat an dieser Stelle andere",
};
