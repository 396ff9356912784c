import type { helpOfReadWords as english } from "../../english/screens/help-read.ts";
import type { Translated } from "../../translated.ts";

/** The help of the procedure as prepared. */
export const helpOfReadWords: Translated<typeof english> = {
  "guide/read": "Aide : lire une procédure",
  "guide/read-finding":
    "Un constat figure à l’étape qu’il concerne, avec son niveau : une erreur doit être corrigée avant la sortie, un point d’attention demande un regard, un conseil peut être laissé. Ce qui découle d’un autre constat figure dessous.",
  "guide/read-conditions":
    "« Seulement tant que », « Seulement dans », « Pas avant » et « Après » disent ce qui doit être vrai avant une étape. « Ensuite » dit ce qu’elle change.",
  "guide/read-branch":
    "« Seulement si » marque les étapes d’une branche. Le plan prend ici pour chaque décision l’issue que le fichier attend.",
  "guide/read-outline":
    "Cette page montre le fichier seul : sans heure de début, sans orbite et sans rien de ce qui s’est passé. Choisissez-les sur la chronologie.",
  "guide/read-waits":
    "Une attente nomme qui ou ce qui est attendu ; elle découle du plan, et n’est pas une étape du fichier.",
  "guide/read-no-plan":
    "Là où il n’y a pas d’heure planifiée, la procédure ne peut pas être planifiée telle quelle, ou l’étape dépend d’une décision. Les constats disent pourquoi.",
  "guide/read-mend":
    "Modifier mène au tableau, où un constat se corrige ; ou corrigez le fichier dans un éditeur et réimportez-le comme autre révision.",
  "guide/texts":
    "Une procédure peut porter ses textes en plusieurs langues : « Textes de la procédure » en choisit une, ici et sous Plus pendant une sortie, et un bouton affiche le texte d’origine puis y revient. Le choix vaut sur tous les écrans de la procédure et de ses sorties. « Texte d’origine » à côté d’un texte dit qu’il manque dans cette langue, « texte plus ancien » que l’auteur a changé le sien depuis.",
};
