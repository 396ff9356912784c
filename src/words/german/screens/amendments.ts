import type { amendmentWords as english } from "../../english/screens/amendments.ts";
import type { Translated } from "../../translated.ts";

/** What is said of amendments of a running walk: why one has no effect, and what one does. */
export const amendmentWords: Translated<typeof english> = {
  "walk/amended": "Der Plan wurde geändert",
  "walk/amended-because": "Der Plan wurde geändert: {$reason}",
  "walk/step-dropped": "eine Planänderung hat „{$step}“ aus dem Plan genommen",
  "amend/changes-nothing": "die Planänderung ändert nichts",
  "amend/unreadable": "die Änderungen sind nicht lesbar: {$why :message}",
  "amend/cannot-apply": "Änderung {$number :integer} ist nicht möglich: {$why :message}",
  "amend/unsound": "die Prozedur wäre damit nicht verwendbar: {$why :message}",
  "amend/begun-dropped":
    "„{$step}“ hat begonnen oder ist abgeschlossen und kann nicht aus dem Plan genommen werden",
  "amend/entered-dropped":
    "von „{$step}“ handeln Einträge des Außeneinsatzes, daher kann es nicht aus dem Plan genommen werden; es kann mit einem Grund übersprungen werden",
  "amend/begun-moved": "„{$step}“ hat begonnen oder ist abgeschlossen und kann nicht verschoben werden",
  "amend/begun-changed": "„{$step}“ hat begonnen und behält Ausführende, Ort, Entscheidung und was es bewegt",
  "amend/complete-changed": "„{$step}“ ist abgeschlossen und kann nicht geändert werden",
  "amend/before-begun":
    "„{$step}“ käme unter den Schritten von {$crew} vor „{$begun}“, das begonnen hat oder abgeschlossen ist",
  "amend/decision-gone": "die Entscheidung „{$decision}“ wurde getroffen und muss bleiben, wie sie ist",
  "amend/named-gone": "Einträge des Außeneinsatzes nennen „{$id}“, das in der Prozedur bleiben muss",
  "amend/no-order": "für die restlichen Schritte ist keine Reihenfolge möglich: {$why :message}",
  "amend/no-forecast": "Der Rest des Außeneinsatzes lässt sich nicht mehr planen.",
  "amend/unfit": "„{$step}“ passt in kein Zeitfenster mehr.",
  "amend/over-limit":
    "Nach wahrscheinlichen Zeiten endet der Außeneinsatz nach seinem Zeitlimit: Die Reserve ist {$margin :margin}.",
  "amend/no-home": "Der Heimweg lässt sich nicht mehr angeben.",
  "amend/past-redline":
    "{$crew}: {$supply} ist am Mindeststand, bevor der letzte Schritt erledigt ist; die Reserve ist {$margin :margin}.",
  "amend/not-there": "diese Planänderung gibt es nicht, oder sie hat keine Wirkung",
  "amend/already-seen": "dieses Gerät hat die Planänderung schon gesehen",
};
