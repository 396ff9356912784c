import type { trainWords as english } from "../../english/screens/train.ts";
import type { Translated } from "../../translated.ts";

/** The trainer's screen. */
export const trainWords: Translated<typeof english> = {
  "train/title": "Imprévus",
  "train/no-rehearsal": "Cette sortie n’est pas une répétition, et ne prend pas d’imprévus.",
  "train/not-for-followers":
    "Les imprévus sont pour l’instructeur. Ceux qui suivent n’en apprennent rien avant la clôture de la sortie.",
  "train/told-in-review": "La sortie est close. Son bilan dit ce que chaque imprévu est devenu.",
  "train/none": "Aucun imprévu n’accompagne « {$title} ». Choisissez-en un fichier.",
  "train/choose-file": "Choisir un fichier…",
  "train/file-given":
    "Ce sont des imprévus pour des répétitions de la procédure « {$procedure} ». Ils sont prêts sur cet appareil, sous « Imprévus » sur l’écran de suivi d’une telle répétition.",
  "train/file-for-none":
    "Ce sont des imprévus, dont la place est sous « Imprévus » sur l’écran de suivi d’une répétition ; le fichier ne dit pas pour quelle procédure, et rien n’en a été conservé.",
  "train/findings": "Ce qui ne va pas dans le fichier",
  "train/finding-at": "Ligne {$line :integer} : {$finding :message}",
  "train/not-entered": "Cela n’a pas pu être saisi : {$why}",
  "train/no-effect": "Cela a été saisi et reste sans effet : {$why :message}.",
  "train/kept-back":
    "La répétition est suivie aussi sur cet appareil. Jusqu’à sa clôture, sa liste, sa chronologie, sa carte et son bilan provisoire montrent ce qu’un imprévu provoque, et jamais que c’en est un. Dans le journal, et dans un journal exporté, les imprévus sont écrits de façon que personne ne les lise par accident ; ce n’est pas un verrou.",
  "train/show-them": "Je suis l’instructeur : montrer les imprévus",
  "train/hide-them": "Masquer les imprévus",
  "train/lay-how":
    ".input {$count :integer} .match $count one {{La graine détermine si cet imprévu ({$count}) vient. Vous n’en êtes pas informé.}} * {{La graine détermine lesquels de ces {$count} imprévus viennent, et quand. Vous n’en êtes pas informé.}}",
  "train/seed": "Graine : la même donne le même tirage",
  "train/lay": "Tirer et programmer",
  "train/laid":
    ".input {$count :integer} .match $count 0 {{La graine n’en a tiré aucun.}} one {{{$count} imprévu est programmé.}} * {{{$count} imprévus sont programmés.}}",
  "train/are-laid":
    ".input {$count :integer} .match $count one {{Cette répétition comporte {$count} imprévu. Son bilan dit lequel une fois qu’elle est close.}} * {{Cette répétition comporte {$count} imprévus. Son bilan dit lesquels une fois qu’elle est close.}}",
  "train/too-late-to-lay":
    "L’horloge a été lancée ; plus rien ne peut donc être programmé. Des imprévus peuvent encore être déclenchés à la main : ici, ou par un instructeur qui a rejoint la sortie par un hub.",
  "train/fired": "« {$title} » a été déclenché.",
  "train/not-started": "Les imprévus peuvent être déclenchés une fois l’horloge lancée.",
  "train/expected": "Attendu, {$crew}, en {$time :length} au plus : {$notice} {$act}",
  "train/by-itself": "Non déclenché. Une fois programmé, il vient de lui-même : {$when :message}",
  "train/laid-for": "Programmé. Il vient de lui-même : {$when :message}",
  "train/was-fired": "Déclenché à PET {$at}.",
  "train/came": "Est venu à PET {$at}.",
  "train/nobody-yet": "Aucune entrée ne montre encore qu’il a été remarqué.",
  "train/first-sign":
    "Premier signe {$time :length form=second} après sa venue, par {$who} : {$what :message}",
  "train/fire": "Déclencher",
  "train/fire-which": "Déclencher « {$title} »",
  "train/fire-now": "Déclencher « {$title} » maintenant",
  "train/leave": "Pas maintenant",
  "train/sight": "Ce que voient les participants",
  "train/at": "PET {$at}",
  "train/crew": "Équipage",
  "train/lane-ready": "prêt",
  "train/lane-waiting": "attend",
  "train/lane-working": "travaille",
  "train/lane-finished": "a terminé",
  "train/unseen": "Personne ne l’a vue.",
  "train/seen": "Vue par {$who}.",
  "guide/train": "Aide : imprévus",
  "guide/train-what":
    "Une répétition peut comporter des imprévus, qu’un instructeur a écrits dans un fichier : une étape qui dure, une valeur hors de ses limites, un objet absent, quelqu’un dont on n’entend plus rien, un consommable qui baisse, une décision dont l’issue est autre.",
  "guide/train-lay":
    "Avant le lancement de l’horloge, une graine détermine lesquels viennent, et quand ; personne n’apprend lesquels. Cela ne demande pas d’instructeur.",
  "guide/train-fire":
    "Un instructeur rejoint la sortie avec le code d’instructeur d’un hub, voit tout, et déclenche des imprévus à la main. Ce qui est déclenché vient aussitôt et ne se reprend pas. La tablette de l’instructeur ne marque rien.",
  "guide/train-here":
    "Sans hub, ou sur la tablette qui joue l’équipage, l’instructeur ouvre cette page là, dans un second onglet aussi, et le dit ; jusque-là, elle n’en montre aucun. Aucun réseau n’est nécessaire. Ce qui est déclenché deux fois compte une fois, et ce qui est déclenché après la clôture reste sans effet.",
  "guide/train-file":
    "Un fichier d’imprévus peut aussi être donné à l’étagère. Il est alors prêt ici, sur cet appareil, pour chaque répétition de sa procédure.",
  "guide/train-play":
    "L’équipage joué fait ce que dit l’imprévu ; il est joué sur la tablette qui a ouvert la répétition. Les participants voient ce qu’ils verraient : une valeur, un consommable, une étape qui dure, et les alertes qui suivent.",
  "guide/train-hidden":
    "Sur les autres tablettes, les imprévus ne sont ni montrés ni envoyés avant la clôture de la sortie. Sur la tablette qui joue l’équipage, ils sont dans le journal, écrits de façon que personne ne les lise par accident ; ce n’est pas un verrou.",
  "guide/train-review":
    "Le bilan de la sortie close dit de chacun quand il est venu, la première entrée qui montre que quelqu’un l’a remarqué, ce qui a été fait et ce qu’il a coûté, à côté de ce qui était attendu. Aucune note d’évaluation n’est donnée.",
  "guide/train-wrong":
    "Un fichier pour une autre procédure, ou qui nomme ce qui n’existe pas, n’est pas repris : chaque constat nomme sa ligne.",
};
