import type { helpOfRemarksWords as english } from "../../english/screens/help-remarks.ts";
import type { Translated } from "../../translated.ts";

/** What the help of reading says of remarks. */
export const helpOfRemarksWords: Translated<typeof english> = {
  "guide/remarks":
    "„Anmerkungen“ nimmt Kommentare und Zustimmungen auf, zu einem Schritt oder zum Ganzen. Offene Kommentare stehen bei den Befunden, bis jemand sie auflöst, auch in späteren Revisionen.",
  "guide/remarks-agree":
    "Eine Zustimmung gilt einem Text allein, mit allen seinen Bytes, und genehmigt nichts. Speichern Sie Anmerkungen als Datei, um sie weiterzugeben: Dateien mehrerer Leser lassen sich in beliebiger Reihenfolge zusammenbringen.",
};
