import type { helpOfShelfWords as english } from "../../english/screens/help-shelf.ts";
import type { Translated } from "../../translated.ts";

/** The help of the shelf. */
export const helpOfShelfWords: Translated<typeof english> = {
  "guide/shelf": "Aide : l’étagère",
  "guide/shelf-walk":
    "Une sortie est une exécution d’une procédure, ou une répétition. Celle qui est en cours vient en premier ; « Continuer » l’ouvre là où elle en était.",
  "guide/shelf-follow":
    "« Suivre » ouvre une sortie d’une procédure. Son horloge ne part que quand quelqu’un touche « Lancer l’horloge ». « Répéter » laisse le programme jouer l’équipage.",
  "guide/shelf-read":
    "« Lire » montre la procédure telle que préparée, avec ses constats, son plan et sa page imprimable.",
  "guide/shelf-join":
    "« Rejoindre une sortie » suit une sortie que quelqu’un d’autre dirige, avec un code que montre son responsable.",
  "guide/shelf-bring":
    "Les fichiers sont choisis, déposés sur l’étagère ou collés comme texte. Un journal ou une sauvegarde importés deux fois ne nuisent pas : les entrées déjà connues sont laissées telles quelles.",
  "guide/shelf-units":
    "« Langue et affichage » contient la langue, les couleurs, les unités et le choix de l’UTC avec la date ou le jour de l’année. « Unités » donne les grandeurs en unités métriques ou américaines derrière celles qui sont écrites. Saisissez une valeur dans l’unité que nomme son champ ; ce qui est écrit fait foi.",
  "guide/shelf-facts":
    "Les étapes, l’équipage et la fin planifiée à côté d’une procédure sont calculés sur cet appareil à partir de son fichier, sans orbite et sans rien de ce qui s’est passé.",
  "guide/shelf-findings":
    "Erreurs, points d’attention et conseils sont ce que le vérificateur a trouvé. « Aucun constat » signifie qu’il n’a rien à dire sur l’ordre, les lieux, les objets et la rédaction ; il ne vérifie pas le jugement.",
  "guide/shelf-room":
    "Les lignes du bas disent à quel point ce navigateur conserve ce qui est saisi, et combien de place reste.",
  "guide/shelf-unreadable":
    "Une procédure illisible ne peut pas être suivie : « Lire » nomme chaque erreur avec sa ligne et ce qu’il faut faire.",
  "guide/shelf-lost":
    "Une sortie qui manque ici est peut-être sur un autre appareil : importez son journal exporté, ou rejoignez-la par son hub. Rien n’est envoyé nulle part de soi-même.",
  "guide/shelf-remove":
    "« Exporter et retirer » enregistre d’abord le journal, et ne retire rien si l’enregistrement est annulé. Faites une sauvegarde de tout avant de changer d’appareil.",
  "guide/shelf-first":
    "« Ouvrir la sortie d’entraînement » ouvre la sortie d’entraînement, avec un guide à côté ; c’est proposé tant qu’il n’y a aucune sortie sur cet appareil. Plus tard, « Répéter » à la même procédure en ouvre une autre.",
};
