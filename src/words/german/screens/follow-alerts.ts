import type { followAlertWords as english } from "../../english/screens/follow-alerts.ts";
import type { Translated } from "../../translated.ts";

/** The one place of alerts on the follow screen, and the list behind it. */
export const followAlertWords: Translated<typeof english> = {
  "alert/level-act-now": "JETZT HANDELN",
  "alert/level-look-soon": "BALD ANSEHEN",
  "alert/level-know": "INFO",
  "alert/alerts": "Meldungen",
  "alert/since": "Seit PET {$since :clock}.",
  "alert/seen-by": "Gesehen: {$who}.",
  "alert/seen": "Gesehen",
  "alert/step": "Schritt {$number}",
  "alert/more": "{$count :integer} mehr",
  "alert/none": "Keine Meldung liegt vor.",
  "alert/sounds": "Ton und Vibration auf diesem Gerät für",
  "alert/raised-so-far": "Bisherige Meldungen",
  "alert/raised-at": "PET {$at :clock}",
  "alert/how":
    "Eine Meldung sagt etwas und ordnet nichts an: Flugregeln und die Verantwortlichen entscheiden. Eine Meldung der Stufe JETZT HANDELN bleibt, bis sie nicht mehr zutrifft, die anderen, bis sie gesehen wurden.",
};
