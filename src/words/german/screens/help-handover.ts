import type { helpOfHandoverWords as english } from "../../english/screens/help-handover.ts";
import type { Translated } from "../../translated.ts";

/** The help of the handover. */
export const helpOfHandoverWords: Translated<typeof english> = {
  "guide/handover": "Hilfe: die Übergabe",
  "guide/handover-what":
    "Eine Seite, die sagt, wie der Außeneinsatz steht, für alle, die übernehmen: Meldungen, Grenzen, Crew, was aussteht, was anders war als geplant, Vorräte, Zustände und Gegenstände.",
  "guide/handover-moment":
    "Sie gilt für den Zeitpunkt, den ihr Kopf nennt, und für das Protokoll dieses Geräts. „Neu erstellen“ bringt sie auf den neuesten Stand.",
  "guide/handover-paper":
    "„Die Prozedur im jetzigen Stand“ ist die Papierprozedur, in der das Erledigte abgehakt und das Bekannte ausgefüllt ist, um auf Papier weiterzumachen.",
  "guide/handover-figures":
    "Mindeststand und Umkehrzeit sind Prognosen, aus den letzten Ablesungen oder dem geplanten Verbrauch. Ein Vorrat, der nie abgelesen wurde, richtet sich nach dem Plan.",
  "guide/handover-late":
    "Was andere Geräte eingetragen und noch nicht gesendet haben, ist nicht darin. Der Kopf nennt den letzten enthaltenen Eintrag: Fragen Sie nach dem, was fehlt.",
  "guide/handover-unseen":
    "Eine Meldung, die niemand gesehen hat, ist als solche aufgeführt. Lesen Sie sie vor.",
};
