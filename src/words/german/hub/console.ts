import type { hubConsoleWords as english } from "../../english/hub/console.ts";
import type { Translated } from "../../translated.ts";

/** What a hub tells its owner on the console: what it is, and what keeps it from running. */
export const hubConsoleWords: Translated<typeof english> = {
  "hub/own-mistake": "Im Hub ist ein Programmfehler aufgetreten: {$what}",
  "engine/silent-on-entry": "Der Speicher hat nicht gesagt, was aus einem Eintrag wurde.",
  "engine/disk-full": "Der Datenträger von {$place} ist voll: Schaffen Sie Platz darauf.",
  "engine/not-written":
    "{$place} ist nicht beschreibbar: Geben Sie dem Hub einen Datenordner, in den er schreiben darf.",
  "engine/not-opened":
    "{$place} darf nicht geöffnet werden: Geben Sie dem Hub einen Datenordner, in den er schreiben darf.",
  "engine/not-made":
    "{$place} lässt sich nicht anlegen: Geben Sie dem Hub einen Datenordner, in den er schreiben darf.",
  "engine/not-in-folder": "{$place} ist nicht in einem Ordner: Geben Sie dem Hub einen Datenordner.",
  "engine/not-a-folder": "{$place} ist kein Ordner: Geben Sie dem Hub einen Datenordner.",
  "engine/not-a-log":
    "{$place} ist nicht das Protokoll eines Hubs: Holen Sie es aus einer Sicherung zurück, oder verschieben Sie die Datei.",
  "engine/damaged": "{$place} ist beschädigt: Holen Sie es aus einer Sicherung zurück.",
  "engine/another-hub":
    "Ein anderer Hub benutzt {$place}: Beenden Sie ihn, oder geben Sie diesem einen eigenen Ordner.",
  "engine/disk-fails": "Der Datenträger von {$place} ist gestört: Sehen Sie nach ihm.",
  "engine/with-code": "{$what :message} ({$code})",
  "engine/foreign-stream":
    'Der Stream {$stream} bei {$place} stammt nicht von einem Hub (sein {$key} ist ein anderes): Geben Sie mit "?name=" einen anderen Namen an.',
  "engine/not-let-in": "Die Engine bei {$place} lässt diesen Hub nicht zu: Prüfen Sie Benutzer und Passwort.",
  "engine/not-kept": "Die Engine bei {$place} speichert es nicht: {$why :message} ({$code}).",
  "engine/no-answer":
    "Die Engine bei {$place} antwortet nicht ({$why :message}): Starten Sie nats-server mit JetStream.",
  "engine/marker-damaged":
    "{$path} ist beschädigt: Holen Sie die Datei aus einer Sicherung zurück, oder löschen Sie sie.",
  "engine/marker-about":
    "Ein Hub hat in diesem Ordner sein Protokoll. Löschen Sie diese Datei nur, um mit dem weiterzumachen, was hier ist, oder mit nichts: Alle Begleiter lesen dann alles noch einmal.",
  "engine/log-gone":
    "Das Protokoll des Hubs war in {$folder}, aber {$file} ist weg oder leer: Holen Sie es aus einer Sicherung zurück, oder löschen Sie {$marker}, um ohne es weiterzumachen.",
  "engine/left-wal":
    "{$file} gehört zu dem Protokoll, das vorher hier war: Die Datei ist beiseitegelegt und wird nicht benutzt. Löschen Sie sie, wenn nichts fehlt.",
  "engine/not-proven":
    "{$file} ist nicht nachweisbar das Protokoll, das dieser Hub hatte (es wurde kopiert, verschoben oder zurückgeholt): Alle Begleiter lesen alles noch einmal und senden, was fehlt.",
  "engine/backup-is-there": "{$file} gibt es schon: Geben Sie der Sicherung einen anderen Namen.",
  "engine/no-backup-here":
    "Das Protokoll liegt in der Engine bei {$place}: Sichern Sie es mit den Werkzeugen dieser Engine.",
  "hub/full":
    ".input {$most :integer} .match $most one {{Der Hub hat {$most} Verbindung, so viele, wie er halten kann: Untätige werden für neue geschlossen, und andere sollen später wiederkommen.}} * {{Der Hub hat {$most} Verbindungen, so viele, wie er halten kann: Untätige werden für neue geschlossen, und andere sollen später wiederkommen.}}",
  "hub/journal-unusable": "Das Journal {$path} ist nicht beschreibbar: {$why :message}",
  "hub/another-past":
    "Ein Begleiter kennt Einträge, die dieses Protokoll nicht enthält: Es wurde aus einer Kopie zurückgeholt. Alle Begleiter lesen alles noch einmal und senden, was fehlt.",
  "backup/no-socket":
    '"hub backup" kann diesen Hub nicht erreichen, während er läuft: Auf {$path} lässt sich nicht lauschen. Beenden Sie den Hub für eine Sicherung, oder geben Sie ihm einen Datenordner mit kürzerem Namen.',
  "backup/no-answer":
    "Der laufende Hub hat wegen der Sicherung nicht geantwortet: Versuchen Sie es noch einmal.",
  "backup/nothing-there":
    "In {$folder} ist kein Protokoll eines Hubs: Nennen Sie seinen Datenordner mit --data.",
  "engine/rights-mended":
    "Andere konnten in {$folder} lesen oder schreiben: Die Dateien gehören wieder nur diesem Benutzer.",
  "engine/folder-open":
    "Andere dürfen in {$folder} schreiben, der nicht dem Hub allein gehört: Geben Sie dem Hub einen eigenen Datenordner.",
  "engine/secrets-about":
    "Geheimnisse eines Hubs: der Eigentümercode, Schlüssel zum Signieren und Tokens anderer Hubs. Wer diese Datei hat, kann alles. Ohne sie müssen alle neu beitreten.",
  "engine/secrets-damaged":
    "{$path} ist beschädigt: Holen Sie die Datei aus einer Sicherung zurück, oder löschen Sie sie; dann müssen alle neu beitreten.",
  "engine/secrets-gone":
    "Die Datei mit den Geheimnissen des Hubs (hub-secrets.json) ist nicht hier: Der Eigentümercode ist ein anderer, und alle müssen neu beitreten.",
  "engine/single-server":
    'Die Engine hat von allem nur eine Kopie und bestätigt Einträge, bevor sie auf ihrem Datenträger sind: Ein Stromausfall kann die letzten zwei Minuten kosten. Setzen Sie "sync_interval: always" in ihrer Konfiguration (ab nats-server 2.10), oder verlangen Sie "?replicas=3".',
  "engine/no-sqlite": 'SQLite ist hier nicht verwendbar ({$why}): Führen Sie "npm ci" aus.',
  "engine/other-file":
    "{$file} ist nicht das Protokoll eines Hubs: Verschieben Sie die Datei, oder geben Sie dem Hub einen anderen Datenordner.",
  "engine/unsound":
    "{$file} ist beschädigt: Holen Sie die Datei aus einer Sicherung zurück. ({$found}, {$unsound})",
  "engine/newer-version":
    "{$file} wurde von einer neueren Version dieses Programms geschrieben (Format {$version :integer}, nicht {$known :integer}): Verwenden Sie diese.",
  "engine/other-version":
    "{$file} wurde von einer anderen Version dieses Programms geschrieben (Format {$version :integer}, nicht {$known :integer}): Verwenden Sie diese.",
  "engine/file-closed": "{$file} ist geschlossen: Der Hub wird beendet.",
  "engine/slow-to-tell": "Die Engine sagt nur langsam, was sie hat: Versuchen Sie es noch einmal.",
  "engine/slow-to-read": "Die Engine liest nur langsam, was sie hat: Versuchen Sie es noch einmal.",
  "engine/closed": "Die Engine ist geschlossen: Der Hub wird beendet.",
  "engine/address-not-understood":
    "Die Adresse der Engine ist nicht verständlich: Geben Sie nats://host:port an, oder lassen Sie sie weg.",
  "engine/address-has-unknown": "Die Adresse der Engine enthält „{$what}“, das nicht bekannt ist.",
  "engine/bad-replicas": "Die Adresse der Engine verlangt andere replicas als 1, 3 oder 5.",
  "engine/bad-name": "Der Name der Engine darf bis zu 32 Buchstaben, Ziffern, - und _ haben.",
  "engine/unreadable-file": "Die Adresse der Engine nennt {$path}; das ist nicht lesbar.",
  "engine/gives-nothing-back": "Der Speicher gibt nicht zurück, was gerade in ihm gespeichert wurde.",
  "hub/certificate-unreadable": "„{$file}“ ist nicht lesbar.",
  "hub/not-a-certificate":
    "„{$certificate}“ und „{$key}“ sind nicht ein Zertifikat und sein Schlüssel, beide in PEM.",
  "hub/folder-unusable":
    "{$folder} ist nicht verwendbar ({$code}): Geben Sie dem Hub einen Datenordner, in den er schreiben darf.",
  "hub/presence-not-told": "Wer den Außeneinsatz begleitet, konnte nicht gesagt werden: {$why :message}",
  "hub/cert-and-key": "Geben Sie ein Zertifikat und seinen Schlüssel an: --cert und --key gehören zusammen.",
  "hub/plain-or-cert": "Entweder --plain oder --cert: Ein Hub ohne TLS zeigt kein Zertifikat.",
  "hub/upstream-and-code":
    "Geben Sie die Adresse des anderen Hubs und einen Code von ihm an: --upstream und --upstream-code.",
  "hub/upstream-not-understood":
    "Die Adresse des anderen Hubs ist nicht verständlich: Geben Sie https://host:port an, nötigenfalls mit #fingerprint.",
  "hub/no-host": "Geben Sie einen Host an, auf dem gelauscht wird, oder lassen Sie --host weg.",
  "hub/kept-in": "Tetherline-Hub „{$name}“, Protokoll in {$place}.",
  "hub/no-app": "In {$folder} ist keine gebaute App: Nur die Schnittstelle wird angeboten.",
  "hub/plain":
    "Reines HTTP: Setzen Sie einen Proxy mit TLS davor, sonst sind Codes und Tokens unterwegs lesbar.",
  "hub/certificate": "Zertifikat, SHA-256: {$fingerprint}",
  "hub/authority": "Ausgestellt von der eigenen Zertifizierungsstelle dieses Hubs, SHA-256: {$fingerprint}",
  "hub/to-trust":
    "Ein Tablet vertraut ihm, sobald es /tetherline-hub.crt von der Adresse unten installiert hat.",
  "hub/owner-code": "Eigentümercode: {$code}",
  "hub/key-code": "Schlüsselcode, mit dem die Protokolle dieses Hubs nachgeprüft werden: {$key}",
  "hub/witness-trouble":
    "Was dieser Hub in ein Protokoll über sich selbst schreibt, konnte nicht geschrieben werden: {$why :message}",
  "hub/how-to-stop": "Strg+C beendet den Hub. Zum Öffnen:",
  "hub/port-in-use":
    "Port {$port :integer} ist belegt: Beenden Sie, was ihn benutzt, oder geben Sie mit --port einen anderen an.",
  "hub/port-or-folder-denied":
    "Port {$port :integer} oder der Datenordner „{$folder}“ darf nicht benutzt werden: Geben Sie mit --port und --data andere an.",
  "hub/not-this-machine": "„{$host}“ ist keine Adresse dieses Rechners: Geben Sie mit --host eine eigene an.",
  "hub/data-not-a-folder":
    "Der Datenordner „{$folder}“ ist kein Ordner: Geben Sie mit --data einen anderen an.",
  "hub/data-not-in-folder":
    "Der Datenordner „{$folder}“ ist nicht in einem Ordner: Geben Sie mit --data einen anderen an.",
  "hub/data-not-made":
    "Der Datenordner „{$folder}“ lässt sich nicht anlegen: Geben Sie mit --data einen anderen an.",
  "hub/data-denied":
    "Der Datenordner „{$folder}“ darf nicht benutzt werden: Geben Sie mit --data einen anderen an.",
  "hub/data-not-written":
    "Der Datenordner „{$folder}“ ist nicht beschreibbar: Geben Sie mit --data einen anderen an.",
  "hub/data-disk-full": "Der Datenträger des Datenordners „{$folder}“ ist voll: Schaffen Sie Platz darauf.",
  "hub/authority-name": "Tetherline-Hub {$name}",
  "hub/metric-entries": "Angebotene Einträge, nach dem, was aus ihnen wurde",
  "hub/metric-append": "Von der Beurteilung eines Stapels bis zu seiner dauerhaften Speicherung",
  "hub/metric-links": "Verbindungen von Außeneinsätzen mit anderen Hubs, nach ihrem Zustand.",
  "hub/metric-unsent": "Einträge, die auf das Senden an andere Hubs warten.",
  "hub/metric-lag":
    "Alter des ersten Eintrags, der dem am weitesten zurückliegenden der anderen Hubs fehlt, in Sekunden; unendlich, wo einer noch nichts hat.",
  "hub/metric-hub-lag": "Dasselbe für jeden Hub, mit dem dieser verbunden ist.",
  "hub/metric-hub-unsent": "Einträge, die auf das Senden an jeden Hub warten, mit dem dieser verbunden ist.",
  "hub/metric-disk": "Datenträger des Protokolls: freier Platz und Größe, in Bytes.",
  "hub/metric-queue": "Stapel, die in diesem Moment dauerhaft gespeichert werden.",
  "hub/metric-refused": "Nicht ausgeführte Anfragen, nach dem Status der Antwort.",
  "hub/metric-followers": "Auf diesem Hub offene Ereignisströme",
  "hub/metric-memory": "Belegter Arbeitsspeicher dieses Hubs",
};
