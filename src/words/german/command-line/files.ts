import type { filesWords as english } from "../../english/command-line/files.ts";
import type { Translated } from "../../translated.ts";

/** Why a file on a machine cannot be read or written. */
export const filesWords: Translated<typeof english> = {
  "file/standard-input": "Standardeingabe",
  "file/not-read": "„{$file :message}“ ist nicht lesbar: {$why :message}.",
  "file/not-written": "„{$file :message}“ ist nicht beschreibbar: {$why :message}.",
  "file/not-there": "diese Datei gibt es nicht",
  "file/is-directory": "das ist ein Verzeichnis, keine Datei",
  "file/not-this-user": "dieser Benutzer darf sie nicht öffnen",
  "file/read-only": "der Datenträger ist schreibgeschützt",
  "file/disk-full": "der Datenträger ist voll",
  "file/system-reports": "das System meldet {$code}",
  "file/system-error": "das System meldet einen Fehler",
  "file/not-utf-8": "das ist kein Text in UTF-8",
  "file/larger-than-mebibytes": "größer als {$most :number} MiB",
  "file/larger-than-bytes": "größer als {$most :integer} Bytes",
  "cli/no-texts":
    "Die Prozedur hat keine Texte in „{$tag}“. Es gibt {$languages :list}, und „author“ für die ursprünglichen.",
  "cli/no-texts-but-author": "Die Prozedur hat keine Texte in „{$tag}“ und keine außer denen des Verfassers.",
};
