import type { sealWords as english } from "../../english/screens/seal.ts";
import type { Translated } from "../../translated.ts";

/** What a log is worth as a record. */
export const sealWords: Translated<typeof english> = {
  "seal/verdict-whole": "complet",
  "seal/verdict-intact": "intact",
  "seal/verdict-partly": "attesté en partie",
  "seal/verdict-cut": "tronqué",
  "seal/verdict-forked": "dédoublé",
  "seal/verdict-broken": "altéré",
  "seal/log-whole":
    "Complet : la sortie est close, et chaque entrée est telle qu’elle était quand un hub de confiance a fait son dernier point de contrôle.",
  "seal/log-intact":
    "Intact : rien n’a été changé, et chacun est attesté ; ce qui suit le dernier point de contrôle a pu être coupé sans qu’on le voie.",
  "seal/log-partly":
    "Attesté en partie : rien ne montre qu’une entrée a été changée, mais certaines n’ont pas de sceau, ou ont une clé que personne de confiance n’atteste.",
  "seal/log-cut": "Tronqué : des entrées manquent.",
  "seal/log-forked": "Dédoublé : la clé d’un appareil a scellé deux histoires.",
  "seal/log-broken":
    "Altéré : une entrée a été changée, insérée ou mise dans un autre ordre depuis qu’elle a été faite.",
  "seal/quick": "C’était un examen rapide : un sceau par suite d’entrées.",
  "seal/extract-whole":
    "Complet : chaque entrée de cet extrait est telle qu’elle était quand un hub de confiance a fait le point de contrôle.",
  "seal/extract-intact":
    "Intact : rien n’a été changé, et chacun est attesté, mais le point de contrôle ne contenait pas certaines des entrées.",
  "seal/extract-partly":
    "Attesté en partie : rien ne montre qu’une entrée a été changée, mais certaines n’ont pas de sceau, ou ont une clé que personne de confiance n’atteste.",
  "seal/extract-cut": "Tronqué : des entrées manquent.",
  "seal/extract-forked": "Dédoublé : la clé d’un appareil a scellé deux histoires.",
  "seal/extract-broken":
    "Altéré : une entrée a été changée ou insérée depuis qu’elle a été faite, ou sa preuve ne tient pas.",
  "seal/extract-proves-not":
    "Ceci ne prouve pas ce que disent les entrées laissées de côté, ni que celles-ci sont celles qui comptent, ni qu’une entrée est vraie, ni qui tenait la tablette, ni l’heure vraie, ni que le hub est honnête.",
  "seal/found-seal-does-not-fit": "le sceau ne correspond pas à l’entrée",
  "seal/found-other-key": "clé différente de celle de son admission, ou clé refusée",
  "seal/found-does-not-follow": "l’entrée ne suit pas celle d’avant",
  "seal/found-forged-twin": "il y a deux entrées de ce numéro, et l’une est falsifiée",
  "seal/found-seals-stripped": "admission avec une clé, mais aucune entrée n’a de sceau",
  "seal/found-not-proven": "sa preuve ne mène pas au point de contrôle",
  "seal/found-other-walk": "c’est une entrée d’une autre sortie",
  "seal/found-other-entries":
    "le point de contrôle contenait d’autres entrées qu’ici ; il ne dit pas qui les a changées",
  "seal/found-other-order":
    "le point de contrôle contenait les entrées dans un autre ordre qu’ici ; il ne dit pas qui l’a changé",
  "seal/found-unreadable-checkpoint": "le point de contrôle ne peut pas être lu",
  "seal/found-two-histories": "il y a deux histoires, toutes deux scellées avec sa clé",
  "seal/found-missing": "à partir de ce numéro, une entrée manque",
  "seal/found-unsealed": "à partir de ce numéro, les entrées n’ont pas de sceau",
  "seal/found-nobody-vouches": "personne de confiance n’atteste sa clé",
  "seal/found-other-role": "entrée que son rôle ne permet pas de faire",
  "seal/checkpoint-fits": "concorde",
  "seal/checkpoint-cut": "contenait plus que ce qui est ici",
  "seal/checkpoint-other-entries": "contenait d’autres entrées",
  "seal/checkpoint-other-order": "contenait un autre ordre",
  "seal/checkpoint-unreadable": "illisible",
  "seal/checkpoint-not-looked-at": "non examiné",
  "seal/trusted": "de confiance",
  "seal/not-trusted": "pas de confiance",
  "seal/letter":
    ".input {$letter :string} .match $letter A {{Alfa}} B {{Bravo}} C {{Charlie}} D {{Delta}} E {{Echo}} F {{Foxtrot}} G {{Golf}} H {{Hotel}} J {{Juliett}} K {{Kilo}} M {{Mike}} N {{November}} P {{Papa}} Q {{Quebec}} R {{Romeo}} S {{Sierra}} T {{Tango}} U {{Uniform}} V {{Victor}} W {{Whiskey}} X {{X-ray}} Y {{Yankee}} Z {{Zulu}} |0| {{Zéro}} |2| {{Deux}} |3| {{Trois}} |4| {{Quatre}} |5| {{Cinq}} |6| {{Six}} |7| {{Sept}} |8| {{Huit}} |9| {{Neuf}} * {{{$letter}}}",
  "seal/title": "Le journal est-il tel qu’il a été saisi ?",
  "seal/in-short": "Journal : {$verdict}",
  "seal/in-short-unknown": "Le journal n’est pas vérifié",
  "seal/loading": "Chargement de ce qui permet de dire si le journal est tel qu’il a été saisi.",
  "seal/missing":
    "Ce qui permet de dire si le journal est tel qu’il a été saisi n’a pas pu être chargé. Rien d’autre n’est touché.",
  "seal/working-quick": "Un examen rapide des sceaux est en cours.",
  "seal/working-full": "Chaque sceau est examiné : {$done :integer} entrées sur {$of :integer} jusqu’ici.",
  "seal/cancel": "Arrêter l’examen",
  "seal/cancelled": "Le journal n’a pas été vérifié : l’examen a été arrêté.",
  "seal/failed":
    "Le journal n’a pas pu être vérifié ici. La ligne de commande peut vérifier un journal exporté.",
  "seal/look-quick": "Examen rapide",
  "seal/look-full": "Examiner chaque sceau",
  "seal/looked-full": "Chaque sceau a été examiné.",
  "seal/newer":
    ".input {$count :integer} .match $count one {{{$count} entrée est venue depuis, et rien n’en est dit.}} * {{{$count} entrées sont venues depuis, et rien n’en est dit.}}",
  "seal/changed-since": "Le journal a changé depuis.",
  "seal/devices": "Qui a saisi quoi",
  "seal/device-as": "{$name}, {$role}",
  "seal/role-hub": "hub",
  "seal/not-admitted": "aucun hub ne dit qui c’est",
  "seal/device-entries":
    ".input {$entries :integer} .match $entries one {{{$entries} entrée}} * {{{$entries} entrées}}",
  "seal/device-sealed":
    ".input {$sealed :integer} .match $sealed one {{{$sealed} scellée}} * {{{$sealed} scellées}}",
  "seal/device-behind": "{$behind :integer} après le dernier point de contrôle de confiance",
  "seal/found-at": "Numéro {$number :integer} : {$what}.",
  "seal/found-source": "En entier : {$what}.",
  "seal/checkpoints":
    ".input {$count :integer} .match $count one {{{$count} point de contrôle}} * {{{$count} points de contrôle}}",
  "seal/checkpoint":
    ".input {$entries :integer} .match $entries one {{{$code}, pour {$entries} entrée, par {$by} ({$trust}) : {$state}}} * {{{$code}, pour {$entries} entrées, par {$by} ({$trust}) : {$state}}}",
  "seal/code-title": "Code oral",
  "seal/code-of":
    ".input {$entries :integer} .match $entries one {{Le code de la seule entrée ({$entries}) d’ici.}} * {{Le code des {$entries} entrées d’ici.}}",
  "seal/code-how":
    "Lisez-le à voix haute à un autre site, lettre par lettre. Le même code là-bas signifie les mêmes entrées, dans le même ordre.",
  "seal/code-make": "Calculer le code oral",
  "seal/code-again": "Le recalculer",
  "seal/code-working": "Le code oral est en cours de calcul.",
  "seal/code-verdict": "Le bilan dit si le journal est tel qu’il a été saisi.",
  "seal/code-root": "Racine",
  "seal/code-order": "Ordre",
  "seal/code-qr": "Code QR : la sortie, le nombre d’entrées, la racine et l’ordre",
  "seal/heard-label": "Le code que lit l’autre site",
  "seal/heard-letters":
    "Douze lettres, majuscules ou minuscules, avec ou sans tirets. I, L, O et 1 n’y figurent jamais.",
  "seal/heard-same":
    ".input {$entries :integer} .match $entries one {{Identique : les deux sites ont cette seule entrée ({$entries}).}} * {{Identique : les deux sites ont ces {$entries} entrées, dans le même ordre.}}",
  "seal/heard-same-then":
    "Identique à un point de contrôle de {$entries :integer} entrées : les deux sites avaient alors la même chose. Il y en a maintenant {$all :integer} ici.",
  "seal/heard-differs": "Différent. Quelque chose a été mal entendu, ou l’autre site a d’autres entrées.",
  "seal/heard-group": "Groupe {$group :integer} : ici {$here}, là-bas {$there}",
  "seal/heard-letters-said": "{$letters} ({$said})",
  "seal/trust-title": "Hubs de confiance",
  "seal/trust-none":
    "Vous ne faites encore confiance à aucun hub ; on peut donc dire d’un journal, au mieux, qu’il est attesté en partie.",
  "seal/trust-how":
    "La clé d’un hub figure sur son écran de démarrage et sur les bilans imprimés. Prenez-la là, jamais dans le journal à vérifier. Elle est conservée sur cet appareil.",
  "seal/trust-field": "Clé d’un hub",
  "seal/trust-add": "Faire confiance à cette clé",
  "seal/trust-bad": "Ce n’est pas la clé d’un hub : elle a 43 lettres, chiffres, tirets et tirets bas.",
  "seal/trust-forget": "Oublier",
  "seal/trust-forget-which": "Oublier la clé {$key}",
  "seal/trust-in-log":
    "Ce journal nomme le hub {$name} avec la clé ci-dessous. Comparez-la à l’écran du hub lui-même, ou à une feuille imprimée là-bas, avant de lui faire confiance.",
  "seal/trust-same": "Elle y est identique : lui faire confiance",
  "seal/hub-key": "Clé du hub {$name}",
  "seal/extract-title": "Extrait pour d’autres",
  "seal/extract-how":
    "Quelques entrées en entier, chacune avec la preuve qu’un point de contrôle d’un hub la contenait. Des autres, il n’a que les numéros ; une entrée courte placée à côté d’une entrée montrée peut être devinée, et l’hypothèse vérifiée.",
  "seal/extract-kinds": "Quelles entrées",
  "seal/extract-kind": "{$kind :message} ({$count :integer})",
  "seal/extract-task": "De quelle tâche",
  "seal/extract-all-tasks": "Quel que soit leur sujet",
  "seal/extract-make": "Créer l’extrait",
  "seal/extract-working": "L’extrait est en cours de création.",
  "seal/extract-made":
    ".input {$chosen :integer} .match $chosen one {{L’extrait a {$chosen} entrée en entier, et en laisse {$left :integer} de côté.}} * {{L’extrait a {$chosen} entrées en entier, et en laisse {$left :integer} de côté.}}",
  "seal/extract-nothing-chosen": "Aucune entrée du journal n’est de ce genre et sur cette tâche.",
  "seal/extract-no-checkpoint":
    "Le journal n’a aucun point de contrôle d’un hub qui lui corresponde : rien ne permet de prouver un extrait.",
  "seal/extract-behind":
    ".input {$count :integer} .match $count one {{Aucun point de contrôle ne contient encore {$count} de ces entrées. Réessayez quand le hub en aura fait un autre.}} * {{Aucun point de contrôle ne contient encore {$count} de ces entrées. Réessayez quand le hub en aura fait un autre.}}",
  "seal/extract-failed":
    "L’extrait n’a pas pu être créé ici. La ligne de commande peut en créer un à partir d’un journal exporté.",
  "seal/extract-no-head": "ne dit pas de quoi il est l’extrait",
  "seal/extract-no-path": "a une preuve qui ne peut pas être lue",
  "seal/extract-of":
    ".input {$entries :integer} .match $entries one {{Un extrait de {$walk} : {$entries} entrée en entier, prouvée par un point de contrôle de {$held :integer}.}} * {{Un extrait de {$walk} : {$entries} entrées en entier, prouvées par un point de contrôle de {$held :integer}.}}",
  "seal/extract-of-unproven":
    ".input {$entries :integer} .match $entries one {{Un extrait de {$walk} : {$entries} entrée en entier, et aucun point de contrôle pour la prouver.}} * {{Un extrait de {$walk} : {$entries} entrées en entier, et aucun point de contrôle pour les prouver.}}",
  "seal/extract-left-out": "Laissées de côté de {$source} : {$numbers}.",
  "seal/extract-page": "Un extrait d’un journal",
  "seal/extract-code-of":
    "Le code du point de contrôle ; nombre d’entrées qu’il tenait : {$entries :integer}.",
  "seal/extract-heard-same": "Le même : l’autre site tient ce que tenait le point de contrôle.",
  "seal/extract-entries": "Les entrées qu’il montre",
  "seal/extract-hub-entries": "Ce que des hubs ont saisi ({$count :integer})",
  "seal/extract-number": "{$name}, numéro {$number :integer}",
  "seal/extract-nothing": "Aucune de ses entrées ne peut être lue.",
  "seal/extract-gone": "L’extrait n’est plus ouvert : choisissez encore une fois son fichier sur l’étagère.",
  "seal/may-be-kept-back":
    "C’est une répétition qui n’est pas close. Jusque-là, son hub retient les imprévus ; ce qui manque ici peut donc leur appartenir : regardez de nouveau après la clôture.",
  "seal/proves-not":
    "Ceci ne prouve pas qu’une entrée est vraie, ni qui tenait la tablette, ni l’heure vraie, ni ce qui n’a jamais été saisi, ni une coupe après le dernier point de contrôle, ni l’honnêteté d’un hub qui détient le seul point de contrôle.",
};
