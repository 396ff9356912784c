import type { storeWords as english } from "../../english/shell/store.ts";
import type { Translated } from "../../translated.ts";

/** What is wrong with the storage of a device, and with a file that was given to the app. */
export const storeWords: Translated<typeof english> = {
  "store/missing": "Dieser Browser hat keinen Speicher für Apps.",
  "store/denied": "Dieser Browser lässt die App nichts speichern; vielleicht ist dies ein privates Fenster.",
  "store/full": "Der Speicher dieses Geräts ist voll.",
  "store/blocked":
    "Der Speicher dieses Geräts hat nicht geantwortet; vielleicht wird er von einem anderen Tab belegt.",
  "store/newer": "Der Speicher stammt von einer neueren Version dieser App; aktualisieren Sie die App.",
  "store/lost": "Der Speicher dieser App wurde vom Browser geschlossen oder geleert.",
  "store/failed": "Der Speicher dieses Geräts hat einen Fehler gemeldet.",
  "store/in-memory":
    "{$trouble :message} Der Außeneinsatz steht jetzt nur im Arbeitsspeicher: Exportieren Sie ihn, bevor diese Seite geschlossen wird.",
  "given/pasted": "eingefügter Text",
  "given/too-large": "Die Datei ist größer als {$most :number} MiB.",
  "given/unreadable": "Die Datei ist nicht lesbar; vielleicht ist sie ein Ordner oder wurde verschoben.",
  "given/not-text": "Die Datei ist kein Text in UTF-8.",
};
