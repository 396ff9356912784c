import type { practiceWords as english } from "../../english/screens/practice.ts";
import type { Translated } from "../../translated.ts";

/** The guide beside a practice walk, and what offers it. */
export const practiceWords: Translated<typeof english> = {
  "practice/guide": "Guide d’entraînement",
  "practice/clock": "Répétition · son horloge tourne tant que vous regardez",
  "practice/put-away": "Ranger le guide",
  "practice/bring-back": "Afficher le guide",
  "practice/finish": "Finir l’entraînement",
  "practice/tried": "Essayé : {$count :integer} sur {$all :integer}",
  "practice/tried-tap": "appui",
  "practice/tried-joint": "étape commune",
  "practice/tried-value": "valeur hors limites",
  "practice/tried-contingency": "secours",
  "practice/tried-close": "bilan",
  "practice/is-tried": "essai fait",
  "practice/not-tried": "pas encore",
  "practice/start":
    "Vous êtes IV, à l’intérieur : vous lisez les étapes et marquez d’un appui ce qu’annoncent les deux à l’extérieur. Touchez « Lancer l’horloge de répétition ».",
  "practice/first":
    "Chacun a un brin le long du bord, et le brin de qui attend pend. {$crew :list} commence, à l’étape {$step} : touchez « Fait » à côté d’elle.",
  "practice/go-on":
    "Ensuite vient l’étape {$step} de {$crew :list} : {$action}. Touchez « Fait » quand vous entendez que c’est fait.",
  "practice/waits":
    "{$waiting} a atteint l’étape commune {$joint} et y attend {$missing} : son brin pend jusqu’à elle. Continuez avec l’étape {$step} de {$crew :list}.",
  "practice/joint":
    "{$crew :list} sont tous deux à l’étape {$step} : un nœud réunit leurs brins, et un seul appui sur « Fait » la marque pour les deux.",
  "practice/joint-confirm":
    "{$crew :list} sont tous deux à l’étape {$step}, où un nœud réunit leurs brins. Quelqu’un confirme ici : touchez « Confirmé », puis « Fait », ce qui la marque pour les deux.",
  "practice/value-outside":
    "L’étape {$step} demande « {$record} ». Pour voir ce qu’est une alerte, saisissez {$value :quantity}, hors des limites indiquées à côté du champ.",
  "practice/value":
    "L’étape {$step} demande de nouveau « {$record} ». Saisissez {$value :quantity}, puis touchez « Fait ».",
  "practice/owed":
    "L’étape {$step} est faite sans « {$record} », qui est maintenant à compléter, comme le dit la barre au-dessus. Ouvrez l’étape dans la liste pour saisir la valeur ; ou continuez, et elle restera à compléter.",
  "practice/within":
    "Cette valeur est dans les limites ; aucune alerte ne vient donc. Pour en voir une, saisissez plutôt {$value :quantity} pour « {$record} ». {$else :message}",
  "practice/outside":
    "La valeur est hors de ses limites : une alerte le dit sous l’horloge. Touchez « Secours » en bas, « {$contingency} », puis « L’engager : voir ce que cela donnerait », et « Saisir la modification ». {$else :message}",
  "practice/or-go-on": "Ou continuez avec l’étape {$step} de {$crew :list}.",
  "practice/go-on-anyhow": "Ou laissez cela.",
  "practice/brought":
    "La procédure de secours est maintenant dans le plan, et le bilan dira ce qu’elle a coûté. L’étape {$step} de {$crew :list} en fait partie : {$action}. Touchez « Fait ».",
  "practice/close":
    "Toutes les étapes sont terminées. Touchez « Clore la sortie » sous la liste, puis confirmez la clôture.",
  "practice/nobody-works":
    "Personne ne peut commencer d’étape en ce moment : les fiches du haut disent qui et quoi chacun attend.",
  "practice/held":
    "La sortie est suspendue, et ses étapes attendent. Touchez « Lever la suspension » quand elle peut reprendre.",
  "practice/closed": "La sortie est close. Touchez « Lire le bilan » sous la liste.",
  "practice/closed-early":
    "Vous avez clos la sortie avant sa fin, ce qui est permis. Touchez « Lire le bilan » sous la liste pour voir ce qu’il en dit, ou rouvrez-y la sortie.",
  "practice/review":
    "Voici le bilan : le prévu à côté de ce qui s’est passé, qui a attendu qui, et tout ce qui s’est passé autrement. C’était la sortie d’entraînement ; la prochaine est la vôtre.",
  "practice/skipped": "Vous avez omis l’étape {$step}. Elle compte comme terminée, et le bilan la nommera.",
  "practice/out-of-order": "L’étape {$step} a été marquée hors ordre. C’est accepté, et le bilan la nommera.",
  "practice/open-again": "L’étape {$step} est rouverte.",
};
