import type { findingsOfPlanWords as english } from "../../english/screens/findings-plan.ts";
import type { Translated } from "../../translated.ts";

/** What there is to say of a plan in its windows, its light and its limit. */
export const findingsOfPlanWords: Translated<typeof english> = {
  "time/over-limit": "Le plan dépasse la limite de durée de {$over :integer} min.",
  "light/decayed": "D’après son jeu d’éléments, l’orbite décroît moins d’un jour après le début.",
  "window/not-known-start":
    "Sans l’instant de PET 0, on ne sait pas quand vient {$window} ; le plan n’en tient pas compte.",
  "window/not-known-orbit":
    "Sans orbite ni instant de début, on ne sait pas quand vient {$window} ; le plan n’en tient pas compte.",
  "window/no-fit":
    "« {$step} » dure {$length :number} min et peut commencer au plus tôt à PET {$ready :clock}. {$why :message} {$mend :message}",
  "window/not-open-after":
    ".input {$count :integer} .match $count one {{{$windows :list style=chained} n’est plus ouverte ensuite.}} * {{{$windows :list style=chained} ne sont plus ouvertes ensemble ensuite.}}",
  "window/too-short":
    ".input {$count :integer} .match $count one {{{$windows :list style=chained} n’est ensuite ouverte que {$longest :number} min au plus, soit {$short :number} min de trop peu.}} * {{{$windows :list style=chained} ne sont ensuite ouvertes ensemble que {$longest :number} min au plus, soit {$short :number} min de trop peu.}}",
  "window/call-out-of-contact":
    "« {$step} » parle avec le sol de PET {$start :clock} à {$finish :clock}, hors de {$windows :list style=chained}. Nommez une fenêtre de contact dans « within », pour que l’appel l’attende, ou déplacez l’appel.",
  "window/fits-earlier":
    "Elle tiendrait si elle pouvait commencer {$earlier :number} min plus tôt, à PET {$at :clock} au plus tard.",
  "window/fits-shorter": "Elle tiendrait si elle durait {$less :number} min de moins.",
  "window/fits-earlier-or-shorter":
    "Elle tiendrait si elle pouvait commencer {$earlier :number} min plus tôt, à PET {$at :clock} au plus tard, ou si elle durait {$less :number} min de moins.",
  "window/fits-never": "Aucun intervalle de {$windows :list style=chained} n’est jamais assez long.",
  "time/done-late":
    "« {$step} » doit être faite à PET {$by :clock} au plus tard, et dans le plan elle l’est à {$at :finish form=second} : {$over :length} trop tard.",
  "time/done-late-bound":
    "« {$step} » doit être faite à PET {$by :clock} au plus tard, et dans le plan elle l’est à {$at :finish form=second} : {$over :length} trop tard. Elle attend en dernier {$crew :list}, avec « {$other} ».",
  "time/started-late":
    "« {$step} » doit commencer au plus {$within :length} après « {$after} », et dans le plan elle commence {$over :length} trop tard.",
  "time/started-late-bound":
    "« {$step} » doit commencer au plus {$within :length} après « {$after} », et dans le plan elle commence {$over :length} trop tard. Elle attend en dernier {$crew :list}, avec « {$other} ».",
  "place/too-far-apart":
    "{$one} et {$other} sont à {$metres :metres} l’un de l’autre par les chemins à la fin de « {$step} », PET {$at :clock} : {$over :metres round=up} de plus que les {$apart :metres} admis.",
};
