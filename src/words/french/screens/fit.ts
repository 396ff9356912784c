import type { fitWords as english } from "../../english/screens/fit.ts";
import type { Translated } from "../../translated.ts";

/** What still fits under the limit: the panel on the follow screen and on the timeline of a plan. */
export const fitWords: Translated<typeof english> = {
  "fit/title": "Ce qui tient encore",
  "fit/tool": "Retard ?",
  "fit/in-time": "À temps signifie",
  "fit/by-chance": "neuf tirages sur dix sont faits avant la limite",
  "fit/by-likely": "les durées probables y tiennent, quelle que soit la probabilité",
  "fit/working": "Recherche de ce qui tient…",
  "fit/failed": "Ce qui tient n’a pas pu être calculé ici. Fermez le volet et demandez de nouveau.",
  "fit/from": "À partir de PET {$now :clock}, limite {$limit :clock}.",
  "fit/from-no-limit": "À partir de PET {$now :clock}. La procédure n’a pas de limite ; tout tient donc.",
  "fit/proven":
    ".input {$tried :integer} .match $tried one {{Meilleur choix prouvé : rien de ce qui tient n’a plus de valeur ({$tried} ensemble examiné).}} * {{Meilleur choix prouvé : rien de ce qui tient n’a plus de valeur ({$tried} ensembles examinés).}}",
  "fit/no-choice": "Cela tient. Il ne reste aucune tâche facultative à choisir.",
  "fit/best-found":
    ".input {$tried :integer} .match $tried one {{Meilleur choix trouvé : valeur {$worth :number maximumFractionDigits=2} ; rien de ce qui tient ne vaut plus de {$bound :number maximumFractionDigits=2} ({$tried} ensemble examiné).}} * {{Meilleur choix trouvé : valeur {$worth :number maximumFractionDigits=2} ; rien de ce qui tient ne vaut plus de {$bound :number maximumFractionDigits=2} ({$tried} ensembles examinés).}}",
  "fit/no-plan": "Ne tient pas : aucun plan du travail essentiel n’est possible à partir d’ici.",
  "fit/never":
    "Ne tient sous aucune limite : trop souvent, une étape du travail essentiel ne tient dans aucune fenêtre.",
  "fit/short": "Ne tient pas : le travail essentiel seul dépasse de {$time :length}.",
  "fit/without-any": "Aucune tâche facultative",
  "fit/keep-to-plan": "S’en tenir au plan, sans aucune tâche facultative",
  "fit/with": "{$tasks :list} (valeur {$worth :number maximumFractionDigits=2})",
  "fit/fewest": "Laisse le moins de tâches facultatives de tous les ensembles qui tiennent.",
  "fit/without": "Non retenu : {$tasks :list}",
  "fit/in-time-share": "À temps",
  "fit/amend": "Voir ce que donnerait le plan avec ce choix",
  "fit/share": "{$share :chance} (± {$error :number maximumFractionDigits=1} points)",
  "fit/windows": "Ses étapes ont besoin de : {$windows :list}.",
  "fit/left": "Pas comme il le faudrait à la fin",
  "fit/again": "Redemander à partir de maintenant",
  "fit/leave-out": "Laisser du travail essentiel",
  "fit/leave-out-how":
    "Rien d’essentiel n’est laissé, sauf si vous le cochez ici. D’une tâche cochée, plus rien n’est compté.",
  "fit/how":
    "Rien n’est changé ici. La fin suit les durées probables ; « à temps » est la part des tirages propres à cette recherche qui sont faits avant la limite. La valeur est le chiffre de l’auteur, 1 sauf indication contraire.",
};
