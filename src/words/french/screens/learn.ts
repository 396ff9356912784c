import type { learnWords as english } from "../../english/screens/learn.ts";
import type { Translated } from "../../translated.ts";

/** What is said of what walks tell of how long steps take. */
export const learnWords: Translated<typeof english> = {
  "learn/no-evidence": "Aucune sortie n’en dit rien : les chiffres du planificateur demeurent.",
  "learn/one-walk": "Une seule sortie en parle, ce qui est trop peu pour proposer d’autres chiffres.",
  "learn/hardly-moved":
    "La durée probable changerait de moins d’un dixième ou d’une demi-minute : les chiffres du planificateur demeurent.",
  "learn/disagree":
    "Le plan et les sorties divergent : les sorties varient bien plus que planifié. Regardez chacune d’elles avant de changer les chiffres.",
  "learn/offered":
    ".input {$count :integer} .match $count one {{{$count} sortie en parle.}} * {{{$count} sorties en parlent.}}",
  "learn/offered-rehearsed":
    ".input {$count :integer} .match $count one {{{$count} répétition en parle, et aucune sortie réelle.}} * {{{$count} répétitions en parlent, et aucune sortie réelle.}}",
  "learn/title": "Apprendre des sorties",
  "learn/what": "Combien de temps les étapes ont duré, à côté de ce qui était planifié",
  "learn/working": "Lecture des sorties…",
  "learn/failed":
    "Les sorties de cet appareil n’ont pas pu être lues. Rien n’est perdu : revenez en arrière et rouvrez cette page.",
  "learn/no-walks":
    "Il n’y a pas encore de sortie de cette procédure sur cet appareil. Suivez-la ou répétez-la, ou importez un journal sur l’étagère.",
  "learn/told-by":
    ".input {$live :integer} .input {$rehearsed :integer} .match $live $rehearsed one one {{{$live} sortie réelle et {$rehearsed} répétition sur cet appareil}} one * {{{$live} sortie réelle et {$rehearsed} répétitions sur cet appareil}} * one {{{$live} sorties réelles et {$rehearsed} répétition sur cet appareil}} * * {{{$live} sorties réelles et {$rehearsed} répétitions sur cet appareil}}",
  "learn/in-one-go":
    ".input {$count :integer} .match $count one {{{$count} étape a été marquée faite d’un coup avec d’autres et ne dit rien.}} * {{{$count} étapes ont été marquées faites d’un coup avec d’autres et ne disent rien chacune.}}",
  "learn/renamed": "Étapes renommées",
  "learn/renamed-how":
    "Une étape qui a un autre identifiant dans cette révision repart de zéro, sauf si vous dites laquelle elle est à présent. Sont proposées les étapes des mêmes personnes, avec les mêmes objets et vers le même lieu.",
  "learn/renamed-is-now": "« {$action} » ({$id}) est à présent",
  "learn/renamed-none": "aucune de celles-ci",
  "learn/renamed-step": "{$number} {$action}",
  "learn/renamed-said": "{$before} est à présent {$now}.",
  "learn/renamed-take-back": "Reprendre",
  "learn/renamed-take-back-of": "Reprendre ce que {$before} est à présent",
  "learn/unmatched":
    ".input {$count :integer} .match $count one {{{$count} durée vient d’une étape qui n’existe plus, ou qui est à présent un autre travail : {$steps :list}.}} * {{{$count} durées viennent d’étapes qui n’existent plus, ou qui sont à présent un autre travail : {$steps :list}.}}",
  "learn/which": "Étapes montrées",
  "learn/shown-evidence": "Étapes avec des sorties ({$count :integer})",
  "learn/shown-offered": "Étapes avec une proposition ({$count :integer})",
  "learn/shown-all": "Toutes les étapes ({$count :integer})",
  "learn/none-shown": "Il n’y en a aucune.",
  "learn/steps": "Étapes",
  "learn/planned":
    "Planifié : {$likely :length form=second} probable, {$low :length form=second} à {$high :length form=second}",
  "learn/expected":
    "Attendu à présent : {$middle :length form=second}, huit sorties sur dix {$from :length form=second} à {$to :length form=second}",
  "learn/weight": "Poids des sorties {$weight :number maximumFractionDigits=1}",
  "learn/weight-thin": "Mince : poids des sorties {$weight :number maximumFractionDigits=1}",
  "learn/rehearsed-only":
    "d’après des répétitions seules, qui ne disent pas à quelle vitesse va une sortie réelle",
  "learn/take":
    "Planifier {$likely :length form=second} probable, {$low :length form=second} à {$high :length form=second}",
  "learn/walks": ".input {$count :integer} .match $count one {{{$count} sortie}} * {{{$count} sorties}}",
  "learn/walk-took": "{$time :length form=second}, {$mode} du {$at :utc}",
  "learn/walk-broken-off": "Arrêtée après {$time :length form=second}, {$mode} du {$at :utc}",
  "learn/mode-live": "sortie réelle",
  "learn/mode-rehearsal": "répétition",
  "learn/weighs": "pèse {$weight :number maximumFractionDigits=2}",
  "learn/start-said": "début saisi",
  "learn/start-inferred": "début déduit",
  "learn/was-reopened": "rouverte, les deux parties additionnées",
  "learn/was-held": "sans le temps d’une suspension",
  "learn/far-off": "loin des autres, pèse moins",
  "learn/legend-planned": "plan : huit sur dix",
  "learn/legend-found": "plan et sorties : huit sur dix",
  "learn/legend-quantiles": "huit sur dix de ces sorties",
  "learn/legend-live": "sortie réelle",
  "learn/legend-rehearsal": "répétition",
  "learn/legend-broken-off": "arrêtée avant la fin",
  "learn/legend-outlier": "loin des autres",
  "learn/legend-scale": "durée probable planifiée ; les traits voisins sont la moitié et le double",
  "learn/no-learning":
    ".input {$walks :integer} .match $walks one {{{$walks} répétition : aucun apprentissage n’apparaît.}} * {{{$walks} répétitions : aucun apprentissage n’apparaît.}}",
  "learn/learning-shorter":
    ".input {$walks :integer} .match $walks one {{Sur {$walks} répétition, les étapes sont devenues plus courtes : de {$percent :integer} % à chaque doublement du nombre de répétitions.}} * {{Sur {$walks} répétitions, les étapes sont devenues plus courtes : de {$percent :integer} % à chaque doublement du nombre de répétitions.}}",
  "learn/learning-longer":
    ".input {$walks :integer} .match $walks one {{Sur {$walks} répétition, les étapes sont devenues plus longues : de {$percent :integer} % à chaque doublement du nombre de répétitions.}} * {{Sur {$walks} répétitions, les étapes sont devenues plus longues : de {$percent :integer} % à chaque doublement du nombre de répétitions.}}",
  "learn/how":
    "Rien ne change avant que vous enregistriez. Chaque proposition est à prendre ou à laisser ; les sorties ne disent pas pourquoi une étape a duré autant.",
  "learn/save":
    ".input {$count :integer} .match $count 0 {{Enregistrer comme révision {$revision}}} one {{Enregistrer {$count} durée comme révision {$revision}}} * {{Enregistrer {$count} durées comme révision {$revision}}}",
  "learn/summary": "Durées de {$steps :list} d’après les sorties {$walks :list}.",
  "learn/summary-behind": "{$summary} Durées de {$steps :list} d’après les sorties {$walks :list}.",
};
