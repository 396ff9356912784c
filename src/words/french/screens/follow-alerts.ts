import type { followAlertWords as english } from "../../english/screens/follow-alerts.ts";
import type { Translated } from "../../translated.ts";

/** The one place of alerts on the follow screen, and the list behind it. */
export const followAlertWords: Translated<typeof english> = {
  "alert/level-act-now": "AGIR",
  "alert/level-look-soon": "À VOIR VITE",
  "alert/level-know": "À SAVOIR",
  "alert/alerts": "Alertes",
  "alert/since": "Depuis PET {$since :clock}.",
  "alert/seen-by": "Vu par {$who}.",
  "alert/seen": "Vu",
  "alert/step": "Étape {$number}",
  "alert/more": ".input {$count :integer} .match $count one {{{$count} autre}} * {{{$count} autres}}",
  "alert/none": "Aucune alerte en cours.",
  "alert/sounds": "Son et vibration sur cet appareil pour",
  "alert/raised-so-far": "Survenues jusqu’ici",
  "alert/raised-at": "PET {$at :clock}",
  "alert/how":
    "Une alerte informe et n’ordonne rien : les règles de vol et les responsables décident. Celle qui demande d’agir maintenant reste jusqu’à ce qu’elle soit passée, les autres jusqu’à ce qu’elles soient vues.",
};
