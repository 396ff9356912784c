import type { walksComparedWords as english } from "../../english/screens/walks-compared.ts";
import type { Translated } from "../../translated.ts";

/** What is said of many walks side by side. */
export const walksComparedWords: Translated<typeof english> = {
  "walks/title": "Sorties comparées",
  "walks/what": "Toutes les sorties de cette procédure sur un même axe de temps",
  "walks/all": ".input {$count :integer} .match $count one {{{$count} sortie}} * {{{$count} sorties}}",
  "walks/all-how":
    "Une ligne par membre d’équipage, épaisse là où une étape a été faite ; les vides sont des attentes et de l’inactivité. Un losange marque une étape faite autrement que planifié. Touchez une ligne pour ouvrir le bilan de la sortie à cette étape.",
  "walks/of-live": "Sortie réelle du {$at :utc}",
  "walks/of-rehearsal": "Répétition du {$at :utc}",
  "walks/end-complete": "achevée",
  "walks/end-terminated": "interrompue",
  "walks/end-aborted": "abandonnée",
  "walks/end-open": "ouverte",
  "walks/finish": "{$ended}, dernière étape {$finish :finish}",
  "walks/finish-later": "{$ended}, dernière étape {$finish :finish}, {$by :length} plus tard que planifié",
  "walks/finish-earlier": "{$ended}, dernière étape {$finish :finish}, {$by :advance} plus tôt que planifié",
  "walks/order":
    ".input {$broken :integer} .input {$all :integer} .match $broken $all 0 one {{ordre respecté au seul endroit ({$all})}} 0 * {{ordre respecté aux {$all} endroits}} one one {{ordre non respecté au seul endroit ({$all})}} one * {{ordre non respecté à {$broken} endroit sur {$all}}} * one {{ordre non respecté au seul endroit ({$all})}} * * {{ordre non respecté à {$broken} endroits sur {$all}}}",
  "walks/order-none": "pas d’ordre à examiner",
  "walks/deviations":
    ".input {$count :integer} .match $count 0 {{aucun écart}} one {{{$count} écart}} * {{{$count} écarts}}",
  "walks/waits": "Plus longues attentes : {$waits :clauses}",
  "walks/waited": "{$who} : {$waited :message}",
  "walks/open": "Bilan",
  "walks/open-of": "Bilan de la sortie du {$at :utc}",
  "walks/in-second": "dans le second groupe",
  "walks/show-rest":
    ".input {$count :integer} .match $count one {{Montrer {$count} sortie de plus}} * {{Montrer {$count} sorties de plus}}",
  "walks/steps": "Étape par étape",
  "walks/no-steps": "Aucune étape de ces sorties ne dit combien de temps elle a duré.",
  "walks/too-few":
    ".input {$count :integer} .match $count one {{{$count} sortie : en dessous de cinq, il n’y a que les sorties elles-mêmes}} * {{{$count} sorties : en dessous de cinq, il n’y a que les sorties elles-mêmes}}",
  "walks/quantiles":
    "La moitié en {$middle :length form=second}, huit sur dix {$from :length form=second} à {$to :length form=second}, écart habituel d’un facteur {$factor :number maximumFractionDigits=2}",
  "walks/groups": "Deux groupes",
  "walks/groups-choose": "Marquez plus haut les sorties d’un second groupe ; les autres forment le premier.",
  "walks/groups-of":
    "Sorties dans le premier groupe : {$first :integer}, dans le second : {$second :integer}.",
  "walks/groups-untested": "Aucune étape n’a deux sorties dans chaque groupe ; rien n’est donc testé.",
  "walks/groups-none":
    ".input {$count :integer} .match $count one {{Aucune différence n’apparaît dans {$count} étape testée.}} * {{Aucune différence n’apparaît dans les {$count} étapes testées.}}",
  "walks/groups-shown":
    ".input {$count :integer} .input {$all :integer} .match $count one {{Une différence apparaît dans {$count} étape sur {$all} testées.}} * {{Une différence apparaît dans {$count} étapes sur {$all} testées.}}",
  "walks/group-ratio":
    "dans le second groupe, {$ratio :number maximumFractionDigits=2} fois la durée ({$first :integer} et {$second :integer} sorties)",
  "walks/groups-how":
    "Là où aucune différence n’apparaît, il peut y en avoir une malgré tout ; et celle qui apparaît ne dit ni sa cause, ni que quelqu’un est plus rapide.",
  "walks/forecasts": "Les prévisions étaient-elles justes ?",
  "walks/forecasts-working": "Nouveau calcul des prévisions d’après les journaux…",
  "walks/forecasts-none":
    "Aucune prévision ne peut encore être jugée : il faut une sortie close comme achevée, avec plus d’une tâche.",
  "walks/bands-held":
    "À la fin des tâches, {$held :integer} plages de 80 % sur {$count :integer} contenaient la fin qui est venue ({$from :integer} à {$to :integer} % compte tenu du hasard), en {$walks :integer} sorties.",
  "walks/scores":
    "En moyenne, un score d’écart de {$score :length form=second} ; le plan, avec les seuls chiffres du planificateur, de {$planned :length form=second}. Moins vaut mieux.",
  "walks/verdict-too-few": "C’est trop peu pour un verdict : il faut 40 prévisions et 5 sorties.",
  "walks/verdict-hold": "Les plages tiennent à peu près aussi souvent qu’elles le disent.",
  "walks/verdict-too-narrow":
    "Les plages sont trop étroites : la fin est en dehors plus souvent qu’elles le disent.",
  "walks/verdict-too-wide": "Les plages sont plus larges que nécessaire.",
  "walks/forecasts-left-out":
    ".input {$count :integer} .match $count one {{{$count} sortie est écartée, car elle n’a pas été close comme achevée.}} * {{{$count} sorties sont écartées, car elles n’ont pas été closes comme achevées.}}",
  "walks/forecasts-shorter":
    ".input {$count :integer} .match $count one {{{$count} prévision est écartée : une tâche facultative a été faite, qu’elle n’avait pas comptée.}} * {{{$count} prévisions sont écartées : une tâche facultative a été faite, qu’elles n’avaient pas comptée.}}",
  "walks/forecasts-how":
    "Les prévisions d’une même sortie sont justes ou fausses ensemble ; beaucoup de prévisions de peu de sorties en disent donc moins qu’il n’y paraît.",
};
