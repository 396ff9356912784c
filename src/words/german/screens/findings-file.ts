import type { findingsOfFileWords as english } from "../../english/screens/findings-file.ts";
import type { Translated } from "../../translated.ts";

/** What the checker says of a file that is no sound procedure: its JSON, the shape of its parts, its size. */
export const findingsOfFileWords: Translated<typeof english> = {
  "file/syntax-invalid-symbol": "Kein gültiges JSON: Hier steht ein Wort, das JSON nicht kennt.",
  "file/syntax-invalid-number-format": "Kein gültiges JSON: Das ist keine Zahl, wie JSON sie schreibt.",
  "file/syntax-property-name-expected":
    "Kein gültiges JSON: Hier wird ein Schlüssel in doppelten Anführungszeichen erwartet.",
  "file/syntax-value-expected": "Kein gültiges JSON: Hier wird ein Wert erwartet.",
  "file/syntax-colon-expected": "Kein gültiges JSON: Hier fehlt ein Doppelpunkt.",
  "file/syntax-comma-expected": "Kein gültiges JSON: Hier fehlt ein Komma.",
  "file/syntax-close-brace-expected":
    "Kein gültiges JSON: Hier fehlt eine schließende geschweifte Klammer \\}.",
  "file/syntax-close-bracket-expected": "Kein gültiges JSON: Hier fehlt eine schließende eckige Klammer ].",
  "file/syntax-end-of-file-expected": "Kein gültiges JSON: Das JSON endet hier, aber es folgt weiterer Text.",
  "file/syntax-comment": "Kein gültiges JSON: JSON hat keine Kommentare.",
  "file/syntax-unexpected-end-of-string": "Kein gültiges JSON: Eine Zeichenkette ist nicht geschlossen.",
  "file/syntax-unexpected-end-of-number": "Kein gültiges JSON: Eine Zahl ist abgeschnitten.",
  "file/syntax-invalid-unicode": "Kein gültiges JSON: Das ist keine Unicode-Escape-Folge.",
  "file/syntax-invalid-escape-character": "Kein gültiges JSON: Diese Escape-Folge gehört nicht zu JSON.",
  "file/syntax-invalid-character": "Kein gültiges JSON: In einer Zeichenkette steht ein Steuerzeichen.",
  "file/syntax-other": "Kein gültiges JSON: Das ist kein JSON.",
  "file/doubled-key": "Der Schlüssel „{$key}“ steht zweimal in einem Objekt; nur einer kann zählen.",
  "file/empty": "Die Datei ist leer.",
  "file/not-json": "Kein gültiges JSON.",
  "file/nested-too-deeply": "Das JSON ist für eine Prozedur zu tief verschachtelt.",
  "file/other-format": "„{$format}“ ist keine Prozedur dieses Programms; es liest „{$read}“.",
  "file/newer-version":
    "Die Datei hat die Formatversion {$version} und ist neuer als dieses Programm, das bis Version {$read :integer} liest. Aktualisieren Sie das Programm.",
  "file/key-of-newer-format":
    "Der Schlüssel „{$key}“ gehört zu „{$newer}“, und laut Datei ist sie „{$older}“. Ändern Sie die Formatzeile in „{$newer}“.",
  "file/too-many-bytes":
    "Die Datei hat {$size :number minimumFractionDigits=1 maximumFractionDigits=1} MiB; höchstens {$most :number} MiB werden gelesen.",
  "file/too-many-steps":
    ".input {$count :integer} .match $count one {{Die Prozedur hat {$count} Schritt; höchstens {$most :integer} werden gelesen.}} * {{Die Prozedur hat {$count} Schritte; höchstens {$most :integer} werden gelesen.}}",
  "file/too-many-crew":
    ".input {$count :integer} .match $count one {{Die Prozedur hat {$count} Crewmitglied; höchstens {$most :integer} werden gelesen.}} * {{Die Prozedur hat {$count} Crewmitglieder; höchstens {$most :integer} werden gelesen.}}",
  "file/too-many-items":
    ".input {$count :integer} .match $count one {{Die Prozedur hat {$count} Gegenstand; höchstens {$most :integer} werden gelesen.}} * {{Die Prozedur hat {$count} Gegenstände; höchstens {$most :integer} werden gelesen.}}",
  "file/too-many-decisions":
    ".input {$count :integer} .match $count one {{Die Prozedur hat {$count} Entscheidung; höchstens {$most :integer} werden gelesen.}} * {{Die Prozedur hat {$count} Entscheidungen; höchstens {$most :integer} werden gelesen.}}",
  "file/part-entry": "Eintrag {$index :integer}",
  "file/part-key": "„{$key}“",
  "file/part-file": "Die Datei",
  "file/missing-key": "Der Schlüssel {$part :message} fehlt.",
  "file/kind-string": "Text",
  "file/kind-number": "eine Zahl",
  "file/kind-boolean": "true oder false",
  "file/kind-list": "eine Liste",
  "file/kind-object": "ein Objekt",
  "file/kind-int": "eine ganze Zahl",
  "file/kind-null": "null",
  "file/wrong-kind": "{$part :message}: Erwartet wird {$kind :message}, gefunden {$found :message}.",
  "file/form-id": "Kleinbuchstaben, Ziffern und Bindestriche, am Anfang ein Buchstabe oder eine Ziffer",
  "file/form-duration": "eine Dauer nach ISO 8601 in Tagen, Stunden, Minuten und Sekunden, etwa PT1H5M",
  "file/form-short-duration": "eine Dauer von höchstens 366 Tagen",
  "file/form-instant": "ein Zeitpunkt nach RFC 3339 mit Versatz oder Z",
  "file/form-real-instant": "ein Zeitpunkt, den es gibt",
  "file/form-encoded-picture": "ein Bild in Base64",
  "file/form-location":
    'eine Ortsangabe: \\{"place": …\\}, \\{"crew": …\\}, \\{"crews": […]\\} oder \\{"item": …\\}',
  "file/form-stand": 'eine Liste von Crewmitgliedern, oder \\{"by", "time"\\}',
  "file/form-time": 'eine Dauer wie "PT5M", oder \\{"low", "likely", "high"\\}',
  "file/form-span": '\\{"from", "to"\\}, beide PET wie "PT10M" oder beide Zeitpunkte mit Versatz oder Z',
  "file/form-predecessor": 'die id eines Schritts, oder \\{"step", "lag", "within"\\}',
  "file/must-be": "{$part :message}: Erwartet wird {$form :message}.",
  "file/must-be-says": "{$part :message}: Erwartet wird {$form :message} (dort steht „{$says}“).",
  "file/must-be-one-of": "{$part :message}: Erwartet wird {$known :list of=any style=chained}.",
  "file/must-be-one-of-says":
    "{$part :message}: Erwartet wird {$known :list of=any style=chained} (dort steht „{$says}“).",
  "file/too-small": "{$part :message} muss mindestens {$least :number} sein.",
  "file/too-short": "{$part :message} darf nicht kürzer sein als {$least :number}.",
  "file/must-not-be-empty": "{$part :message} darf nicht leer sein.",
  "file/too-big": "{$part :message} darf höchstens {$most :number} sein.",
  "file/too-long": "{$part :message} ist länger als {$most :number}.",
  "file/no-form": "{$part :message} hat keine der zulässigen Formen.",
  "file/not-valid": "{$part :message} ist nicht gültig: {$why}.",
  "file/unknown-key": "Der Schlüssel „{$key}“ ist hier nicht bekannt.",
  "file/unknown-key-meant": "Der Schlüssel „{$key}“ ist hier nicht bekannt. Ist „{$meant}“ gemeint?",
  "file/no-language": "„{$tag}“ ist kein Sprachkürzel (BCP 47) wie fr oder pt-BR.",
  "file/no-language-meant": "Das Sprachkürzel „{$tag}“ wird „{$meant}“ geschrieben (BCP 47).",
  "file/too-many-languages":
    "Die Prozedur hat Texte in {$count :integer} weiteren Sprachen; höchstens {$most :integer} werden gelesen.",
};
