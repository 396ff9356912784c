import type { alertWords as english } from "../../english/screens/alerts.ts";
import type { Translated } from "../../translated.ts";

/** What alerts say while a walk runs. They tell; they order nothing. */
export const alertWords: Translated<typeof english> = {
  "alert/turn-back-passed": "L’heure de demi-tour est passée : c’était {$at :clock}, il y a {$ago :length}",
  "alert/turn-back-near": "L’heure de demi-tour est dans {$time :length}, à {$at :clock}",
  "alert/return-barred": "{$crew :list} : le chemin du retour est barré. {$why :message}",
  "alert/no-return": "{$crew :list} : plus aucun retour à un refuge ne tient, ou aucun n’est connu",
  "alert/no-forecast": "Aucune prévision n’est possible : ce qui reste ne tient plus",
  "alert/over-limit": "D’après la prévision, ce qui reste dépasse la limite de {$over :length}",
  "alert/margin-small": "D’après la prévision, il restera {$margin :length} avant la limite",
  "alert/redline": "{$crew} : {$supply} est au seuil rouge depuis {$at :clock}",
  "alert/redline-near": "{$crew} : {$supply} sera au seuil rouge dans {$time :length}, à {$at :clock}",
  "alert/impossible-reading": "{$crew} : {$supply}, le relevé n’est pas pris en compte. {$why :message}",
  "alert/watch-due": "{$crew :list} : {$watch} (à faire depuis {$due :clock})",
  "alert/hold": "La sortie est suspendue depuis {$since :clock}",
  "alert/hold-because": "La sortie est suspendue depuis {$since :clock} : {$reason}",
  "alert/decided-otherwise":
    "{$ask} {$outcome} ; auparavant c’était {$was}, et rien n’a été fait sur cette branche",
  "alert/decided-otherwise-after":
    "{$ask} {$outcome} ; auparavant c’était {$was}, et sur cette branche a été fait : {$steps :list}",
  "alert/decided-contrary":
    "{$ask} {$who} a décidé {$outcome}, qui compte ; {$other} avait décidé {$was}, et rien n’a été fait sur cette branche. Le responsable dit ce qui est retenu",
  "alert/decided-contrary-after":
    "{$ask} {$who} a décidé {$outcome}, qui compte ; {$other} avait décidé {$was}, et sur cette branche a été fait : {$steps :list}. Le responsable dit ce qui est retenu",
  "alert/asked-again":
    "{$ask} La question est rouverte, et {$outcome} reste en vigueur jusqu’à une autre décision",
  "alert/item-elsewhere": "{$item} est avec {$holders :list}, et {$crew :list} en a besoin pour {$step}",
  "alert/overtime":
    "{$crew :list} : {$step} (en cours depuis {$time :length}, {$high :length} au plus étaient planifiées)",
};
