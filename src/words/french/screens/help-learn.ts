import type { helpOfLearnWords as english } from "../../english/screens/help-learn.ts";
import type { Translated } from "../../translated.ts";

/** The help of learning from walks and of walks compared. */
export const helpOfLearnWords: Translated<typeof english> = {
  "guide/learn": "Aide : apprendre des sorties",
  "guide/learn-strip":
    "Chaque étape a une bande : en haut, vide, où se situent huit sorties sur dix d’après le plan ; en bas, pleine, où elles se situent d’après le plan et les sorties ensemble. Toutes les bandes ont la même échelle : le trait interrompu est la durée probable planifiée, les traits voisins la moitié et le double.",
  "guide/learn-marks":
    "Un point plein est une sortie réelle, un point vide une répétition. Une flèche a été interrompue et aurait duré plus. Un anneau est loin des autres : il pèse moins, et n’est pas écarté.",
  "guide/learn-weight":
    "Une sortie réelle pèse 1. Toutes les répétitions d’une étape ensemble pèsent moins qu’une sortie réelle. « Mince » signifie qu’une sortie de plus peut beaucoup changer les chiffres.",
  "guide/learn-left-out":
    "Des étapes marquées faites à moins de cinq secondes l’une de l’autre ne disent rien chacune, les suspensions ne comptent pas, et une étape que d’autres font à présent, ou qui déplace d’autres objets, repart de zéro.",
  "guide/learn-offer":
    "D’autres chiffres sont proposés quand au moins deux sorties renseignent sur une étape et que sa durée probable changerait d’un dixième et d’une demi-minute. Prenez ceux que vous approuvez, et enregistrez-les comme nouvelle révision : celle de l’étagère reste telle quelle.",
  "guide/learn-disagree":
    "« Le plan et les sorties divergent » signifie que les sorties varient bien plus que planifié. Ouvrez-les avant de changer les chiffres : l’étape recouvre peut-être deux choses différentes.",
  "guide/learn-claims":
    "Ces chiffres ne disent ni pourquoi une étape a duré autant, ni qui est plus rapide, et des répétitions seules ne disent pas à quelle vitesse va une sortie réelle.",
  "guide/learn-here":
    "Seules les sorties sur cet appareil comptent. Un journal venu d’ailleurs s’importe sur l’étagère.",
  "guide/walks": "Aide : sorties comparées",
  "guide/walks-strips":
    "Chaque sortie est une bande sur un même axe de temps : une ligne par membre d’équipage, épaisse là où une étape a été faite. Un losange marque un écart.",
  "guide/walks-open":
    "Un appui sur une bande ouvre le bilan à cette étape ; la liste des sorties sous une étape fait de même.",
  "guide/walks-steps":
    "À partir de cinq sorties, une étape a les points entre lesquels se situent huit sur dix, et le facteur dont les durées s’écartent d’ordinaire du milieu. En dessous de cinq, il n’y a que les sorties elles-mêmes.",
  "guide/walks-order":
    "L’ordre porte sur chaque paire d’étapes dont l’une doit venir en premier, quand les deux ont été faites.",
  "guide/walks-groups":
    "Deux groupes sont comparés étape par étape. Une différence n’est montrée que là où le hasard ne la produirait guère, compte tenu du nombre d’étapes.",
  "guide/walks-forecasts":
    "La prévision à la fin de chaque tâche est recalculée à partir du journal, telle qu’elle était montrée alors, et comparée à la fin qui est venue.",
};
