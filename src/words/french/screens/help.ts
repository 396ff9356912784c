import type { helpWords as english } from "../../english/screens/help.ts";
import type { Translated } from "../../translated.ts";

/** What the help of several screens says alike. */
export const helpWords: Translated<typeof english> = {
  "guide/marks": "Ce que signifient les marques",
  "guide/figures": "D’où viennent les chiffres",
  "guide/doing": "Ce qu’on peut faire ici",
  "guide/trouble": "Quand il manque quelque chose ou en cas d’erreur",
  "guide/advice": "Ce que ce n’est pas",
  "guide/advises":
    "Tetherline conseille et ne commande jamais. Les règles de vol, les règlements locaux et la pratique des personnes habilitées font foi, et là où l’écran s’en écarte, ce sont eux qui ont raison. Gardez la procédure imprimée à portée de main.",
  "guide/offline": "Cette aide est conservée sur l’appareil et n’a pas besoin de réseau.",
  "guide/strand":
    "Un trait le long de la liste est un brin : un membre d’équipage. Ses tirets disent qui c’est, et son étiquette est en haut. Le premier à l’extérieur a un trait plein, le deuxième des tirets longs, le premier à l’intérieur des courts, le premier au sol des espacés.",
  "guide/bead":
    "Une perle sur un brin est une étape de ce membre d’équipage : vide tant qu’elle est à venir, pleine une fois faite.",
  "guide/knot":
    "Un nœud est une étape commune : les brins de tous ceux qui y prennent part se rejoignent, et elle commence quand ils sont tous là.",
  "guide/perhaps":
    "Une perle ou un nœud en tirets est une étape omise, ou faite seulement si une décision a une certaine issue.",
  "guide/alert-words":
    "AVERTISSEMENT, ATTENTION et NOTE figurent avant l’action de leur étape. Ils diffèrent par le mot et le bord autant que par la couleur.",
  "guide/critical":
    "Critique signifie que l’étape est sur la chaîne qui fixe la fin : tout retard de cette étape retarde la fin.",
  "guide/slack":
    "Le battement est le retard que peut prendre la fin d’une étape sans que la fin de la sortie bouge.",
  "guide/planned-times":
    "Les heures planifiées découlent des durées probables du fichier, de l’ordre, des chemins et des fenêtres. Elles sont tronquées à la minute là où aucune seconde ne figure.",
  "guide/margin":
    "La marge est la limite de durée de la procédure moins la fin. Sans limite, il n’y en a pas.",
  "guide/share":
    "Un pourcentage dans la limite compte des tirages : la durée de chaque étape est tirée de la distribution PERT-bêta entre sa durée basse et sa durée haute, toujours avec la même graine, si bien que tous les appareils disent la même chose.",
};
