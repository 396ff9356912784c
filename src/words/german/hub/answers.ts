import type { hubAnswerWords as english } from "../../english/hub/answers.ts";
import type { Translated } from "../../translated.ts";

/** What a hub answers to whoever asks it, beside the code for programs. */
export const hubAnswerWords: Translated<typeof english> = {
  "answer/body-too-large": "Der Inhalt ist zu groß: Senden Sie ihn in kleineren Teilen.",
  "answer/too-much-a-minute": "Dieses Gerät sendet zu viel auf einmal: Warten Sie ein wenig.",
  "answer/media-type":
    "Senden Sie application/json, application/cloudevents-batch+json oder application/cloudevents+json.",
  "answer/content-length": "Der Inhalt ist nicht so lang, wie Content-Length angibt.",
  "answer/bad-address": "Die Adresse ist nicht geschrieben wie eine Adresse.",
  "answer/own-mistake": "Im Hub ist ein Programmfehler aufgetreten; seine Konsole sagt mehr.",
  "answer/headers-too-large": "Die Kopfzeilen sind größer als 16 kB.",
  "answer/too-slow": "Die Anfrage kam zu langsam herein.",
  "answer/full":
    "Dieser Hub hat so viele Verbindungen, wie er halten kann: Versuchen Sie es bald noch einmal.",
  "answer/other-name":
    "Dieser Hub wird unter diesem Namen nicht angeboten: Öffnen Sie ihn über seine Adresse, oder starten Sie ihn mit --also-as und dem Namen.",
  "answer/not-understood": "Die Anfrage ist nicht verständlich.",
  "judge/no-entry": "Das ist kein Eintrag: {$why :message}.",
  "judge/control-characters": "Das ist kein Eintrag: source oder id enthält Steuerzeichen.",
  "judge/other-walk": "Das subject ist nicht der Außeneinsatz, an den gesendet wurde.",
  "judge/seal-does-not-fit": "Das Siegel passt nicht zu dem Schlüssel, mit dem das Gerät beigetreten ist.",
  "judge/not-by-role": "Der Eintrag darf nicht geschrieben werden: {$why :message}.",
  "judge/too-long":
    "Der Eintrag hat {$length :integer} Zeichen, und seine Art darf hier {$most :integer} haben: Kürzen Sie ihn.",
  "judge/no-room":
    "Dafür ist kein Platz mehr: Der Außeneinsatz oder der Anteil dieses Geräts daran ist voll.",
  "judge/ahead":
    "Die hlc ist der Uhr des Hubs {$seconds :integer} s voraus: Stellen Sie die Uhr des Geräts, und stempeln Sie den Eintrag neu.",
  "judge/time-ahead":
    ".input {$days :integer} .match $days one {{Die Zeit ist der Uhr des Hubs {$days} Tag voraus: Stellen Sie die Uhr des Geräts oder die des Hubs.}} * {{Die Zeit ist der Uhr des Hubs {$days} Tage voraus: Stellen Sie die Uhr des Geräts oder die des Hubs.}}",
  "judge/own-device":
    "Der Eintrag ist von einem Gerät, das dieser Hub selbst zugelassen hat und das seine Einträge selbst bringt; dieser wird beiseitegelegt.",
  "judge/conflict": "Ein anderer Eintrag mit dieser source und id ist schon da; dieser wird beiseitegelegt.",
  "answer/no-token": "Treten Sie zuerst dem Außeneinsatz bei: Dies braucht ein Token.",
  "answer/bad-token": "Dieses Token gilt nicht oder nicht mehr: Treten Sie dem Außeneinsatz noch einmal bei.",
  "answer/cross-site": "Eine Seite einer anderen Website darf das nicht.",
  "answer/other-walk": "Dieses Token gehört zu einem anderen Außeneinsatz.",
  "answer/bad-walk": "Das ist nicht geschrieben wie die id eines Außeneinsatzes.",
  "answer/no-device": "Der Eigentümercode gehört zu keinem Gerät: Treten Sie dem Außeneinsatz bei.",
  "answer/lead-only": "Das darf nur eine Leitung des Außeneinsatzes.",
  "answer/bad-code": "Dieser Code gilt nicht oder nicht mehr: Bitten Sie um einen neuen.",
  "answer/code-used": "Dieser Code hat so viele Geräte zugelassen, wie er darf: Bitten Sie um einen neuen.",
  "answer/walk-needed": "Der Eigentümercode gehört zu keinem Außeneinsatz: Geben Sie an, zu welchem.",
  "answer/relay-by-owner":
    "Nur der Eigentümer des Hubs lässt einen anderen Hub zu: Erzeugen Sie den Code dafür mit dem Eigentümercode.",
  "answer/bad-proof":
    "Der Schlüssel dieses Geräts wurde nicht bewiesen: Fordern Sie sofort eine neue Aufgabe an, und signieren Sie sie für diesen Hub, diesen Außeneinsatz und dieses Gerät.",
  "answer/other-key":
    "Der Name dieses Geräts gehört in diesem Außeneinsatz zu einem anderen Schlüssel, und nur dieser darf ihn haben: Treten Sie unter einem neuen Namen bei.",
  "answer/key-needed":
    "Der Name dieses Geräts gehört in diesem Außeneinsatz zu einem Schlüssel, der nicht bewiesen wurde: Treten Sie mit diesem Schlüssel oder unter einem neuen Namen bei.",
  "answer/device-taken":
    "Ein Gerät dieses Namens ist ohne Schlüssel im Außeneinsatz und behält seinen Namen, solange es darin ist: Treten Sie mit seinem Token oder unter einem neuen Namen bei, oder lassen Sie es von einer Leitung entfernen.",
  "answer/device-left":
    "Ein Gerät dieses Namens hat in diesem Außeneinsatz ohne Schlüssel geschrieben und ist draußen, daher lässt sich nicht erkennen, ob dies dasselbe ist: Treten Sie mit dem Eigentümercode des Hubs oder unter einem neuen Namen bei.",
  "answer/device-elsewhere":
    "Dieser Name gehört zu einem Gerät eines anderen Hubs, mit dem dieser verbunden ist: Treten Sie dort oder unter einem neuen Namen bei.",
  "answer/too-many": "Zu viele Anfragen: Warten Sie ein wenig.",
  "answer/too-many-tries":
    "Aus diesem Netz kamen zu viele falsche Codes: Versuchen Sie es in {$seconds :integer} s noch einmal.",
  "answer/not-json": "Der Inhalt ist kein JSON in UTF-8.",
  "answer/bad-part": "„{$where}“ fehlt im Inhalt oder ist falsch.",
  "answer/bad-body": "Der Inhalt ist kein JSON-Objekt, wie es verlangt ist.",
  "answer/store": "Der Speicher dieses Hubs ist nicht beschreibbar.",
  "answer/too-many-entries":
    ".input {$most :integer} .match $most one {{Senden Sie höchstens {$most} Eintrag auf einmal.}} * {{Senden Sie höchstens {$most} Einträge auf einmal.}}",
  "answer/bad-cursor": "Ein Cursor wird <epoch>:<offset> geschrieben, oder mit seiner Prüfsumme dahinter.",
  "answer/send-one": "Senden Sie ein Ereignis.",
  "answer/send-array": "Senden Sie ein JSON-Array von Ereignissen.",
  "answer/not-found": "Unter dieser Adresse ist nichts.",
  "answer/no-invitation": "Eine solche Einladung zu diesem Außeneinsatz gibt es nicht oder nicht mehr.",
  "answer/no-follower": "In diesem Außeneinsatz ist kein solches Gerät.",
};
