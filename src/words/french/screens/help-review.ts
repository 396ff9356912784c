import type { helpOfReviewWords as english } from "../../english/screens/help-review.ts";
import type { Translated } from "../../translated.ts";

/** The help of the review. */
export const helpOfReviewWords: Translated<typeof english> = {
  "guide/review": "Aide : le bilan",
  "guide/review-pairs":
    "Les images placent ce qui était planifié à côté de ce qui a été réalisé. Chaque signe est expliqué à côté de son image, et les tableaux en dessous donnent la même chose en chiffres.",
  "guide/review-drift": "La dérive est le retard (+) ou l’avance (−) de la fin d’une étape sur le plan.",
  "guide/review-deviations":
    "Un écart est tout ce qui a été fait autrement que planifié : une omission, un autre ordre, une valeur hors de ses limites, quelque chose qui n’est jamais venu. Il n’accuse personne.",
  "guide/review-delay":
    "Ce qui a fait le retard suit, étape par étape, la chaîne qui a fixé la fin : travail plus long ou plus court, et attentes, avec qui ou quoi.",
  "guide/review-tables":
    "Modifications, confirmations, contrôles, mesures, consommables au fil du temps, décisions, étapes rouvertes, objets corrigés et alertes ont chacun un tableau, avec quand et par qui. Une ligne qui dit « manquant » ou « non fait » n’est jamais venue. Planifié désigne toujours le plan avec lequel la sortie a été ouverte ; chaque modification dit ce qu’elle a changé à la fin et à la marge.",
  "guide/review-surprises":
    "Les imprévus d’une répétition close figurent à côté de ce que leur instructeur attendait : quand chacun est venu, la première entrée qui montre que quelqu’un l’a remarqué, ce qui a été fait, ce qu’il a coûté. Aucune note d’évaluation n’est donnée.",
  "guide/review-comments":
    "Un commentaire est conservé dans le journal comme note, même après la clôture de la sortie, et ne change aucun chiffre.",
  "guide/review-log":
    "Tout ici est calculé à partir du journal, tel que saisi, et rien n’est ajouté. Le plan est celui de la procédure avec laquelle la sortie a été ouverte.",
  "guide/review-starts":
    "Un appui par étape dit quand elle a fini. Quand personne n’a saisi son début, il est pris au moment où ses exécutants, son ordre et ses fenêtres l’ont permis.",
  "guide/review-clocks":
    "Les heures viennent des horloges des appareils. Quand une horloge a été comparée à celle du hub, le tableau des horloges dit de combien elle s’écartait.",
  "guide/review-open":
    "Tant que la sortie n’est pas close, ceci est le bilan provisoire : ce qui n’est pas encore fait n’est pas un écart.",
  "guide/review-wrong":
    "Une entrée fausse s’annule ou se corrige sur l’écran de suivi, et les deux restent dans le journal : rien n’est jamais supprimé.",
  "guide/review-record":
    "« Le journal est-il tel qu’il a été saisi ? » examine les sceaux des appareils. Du meilleur au pire : complet, intact, attesté en partie, tronqué, dédoublé, altéré ; l’appareil le plus mal classé fixe le verdict. Les anciens journaux n’ont pas de sceaux, ce qui n’est pas une erreur.",
  "guide/review-record-how":
    "Un examen rapide prend un sceau par suite d’entrées, qui atteste celles d’avant ; l’examen complet prend environ une milliseconde par entrée, et plus sur une tablette lente. Seul un hub dont vous avez donné la clé ici peut attester des appareils.",
  "guide/review-voice-code":
    "Le code oral représente toutes les entrées et leur ordre. Deux sites qui se lisent le même code ont la même chose ; quand les codes diffèrent, les groupes qui diffèrent sont nommés.",
  "guide/review-unsound":
    "Quand un journal est tronqué, dédoublé ou altéré : gardez chaque copie telle quelle, exportez le journal de chaque appareil et de chaque hub, et comparez-les. Le bilan ci-dessus reste celui du journal tel qu’il est ici.",
  "guide/review-extract":
    "Un extrait montre quelques entrées à d’autres sans le reste, et peut être vérifié par quiconque a la clé du hub.",
  "guide/extract": "Aide : un extrait d’un journal",
  "guide/extract-what":
    "Un extrait montre quelques entrées d’un journal en entier, chacune avec la preuve que le point de contrôle d’un hub la tenait, et des autres les numéros seuls. Il est lu dans son fichier et n’est pas repris : rien n’en devient une sortie sur cet appareil.",
  "guide/review-export":
    "Les exports sont des fichiers pour d’autres : le journal pour un autre Tetherline, le tableau pour un tableur, le journal d’événements pour les outils qui lisent XES.",
};
