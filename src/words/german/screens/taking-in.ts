import type { takingInWords as english } from "../../english/screens/taking-in.ts";
import type { Translated } from "../../translated.ts";

/** What the shelf says of files that it is given. Its first screen says none of it. */
export const takingInWords: Translated<typeof english> = {
  "shelf/nothing-given": "Es gibt nichts einzulesen: keine Datei und keinen Text.",
  "shelf/of-file": "{$file}: {$what}",
  "shelf/log-taken-in":
    ".input {$added :integer} .input {$known :integer} .input {$walks :integer} .match $added $walks one one {{{$added} Eintrag eingelesen, {$known} schon bekannt, für {$walks} Außeneinsatz.}} one * {{{$added} Eintrag eingelesen, {$known} schon bekannt, für {$walks} Außeneinsätze.}} * one {{{$added} Einträge eingelesen, {$known} schon bekannt, für {$walks} Außeneinsatz.}} * * {{{$added} Einträge eingelesen, {$known} schon bekannt, für {$walks} Außeneinsätze.}}",
  "shelf/conflicting": "{$count :integer} ausgelassen: Andere Einträge haben dieselbe Quelle und id.",
  "shelf/line-left-out": "Zeile {$line :integer} wurde ausgelassen: {$why}.",
  "shelf/more-lines-left-out":
    ".input {$count :integer} .match $count one {{{$count} weitere Zeile wurde ausgelassen.}} * {{{$count} weitere Zeilen wurden ausgelassen.}}",
  "shelf/extract-opened":
    "Es ist ein Auszug aus einem Protokoll: Er wird gezeigt, und nichts davon wird übernommen.",
  "shelf/unknown-file":
    "Das ist weder eine Prozedur noch das Protokoll eines Außeneinsatzes noch eine Sicherung dieser App.",
  "shelf/backup-taken-in":
    ".input {$procedures :integer} .input {$entries :integer} .match $procedures $entries one one {{{$procedures} Prozedur und {$entries} Eintrag eingelesen; der Rest war schon da.}} one * {{{$procedures} Prozedur und {$entries} Einträge eingelesen; der Rest war schon da.}} * one {{{$procedures} Prozeduren und {$entries} Eintrag eingelesen; der Rest war schon da.}} * * {{{$procedures} Prozeduren und {$entries} Einträge eingelesen; der Rest war schon da.}}",
  "shelf/procedure-taken-in": "„{$title}“ ist in der Ablage.",
  "shelf/procedure-known": "„{$title}“ war schon in der Ablage.",
  "shelf/procedure-refused": "Als Prozedur ist das nicht verwendbar.",
  "shelf/finding-at-line": "Zeile {$line :integer}: {$finding :message}",
};
