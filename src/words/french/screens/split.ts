import type { splitWords as english } from "../../english/screens/split.ts";
import type { Translated } from "../../translated.ts";

/** Who does what and in which order: the panel on the timeline of a plan, and `split` on the command line. */
export const splitWords: Translated<typeof english> = {
  "split/title": "Meilleure répartition",
  "split/rest": "Meilleure répartition du reste",
  "split/as-of": "La sortie telle qu’elle était à PET {$now :clock}.",
  "split/moved-on": "Quelque chose a été saisi depuis. Redemandez avant de l’adopter.",
  "split/working": "Recherche d’une meilleure répartition…",
  "split/failed":
    "Une meilleure répartition n’a pas pu être recherchée ici. Fermez le volet et demandez de nouveau.",
  "split/going-on": "Recherche en cours : ceci est la meilleure jusqu’ici.",
  "split/stop": "Arrêter la recherche",
  "split/prove": "Le démontrer",
  "split/proving": "Recherche d’une démonstration…",
  "split/no-solver":
    "La démonstration demande une partie de l’application qui n’est pas encore sur cet appareil. Redemandez avec une liaison vers l’origine de l’application.",
  "split/second-proven":
    "Démontré une seconde fois par un programme (choix par oui ou non : {$choices :integer}).",
  "split/second-open":
    "Un programme n’a pas pu trancher dans la recherche permise (choix par oui ou non : {$choices :integer}).",
  "split/second-too-large":
    "C’est trop grand pour être écrit comme programme (choix par oui ou non : {$choices :integer}).",
  "split/now": "Le plan tel quel : fin {$finish :finish}.",
  "split/proven":
    "Meilleure prouvée : fin {$finish :finish}, {$by :advance} plus tôt. Aucune répartition de ce travail ne finit plus tôt.",
  "split/best-found":
    "Meilleure trouvée : fin {$finish :finish}, {$by :advance} plus tôt. Aucune répartition ne peut finir encore plus de {$over :length} plus tôt.",
  "split/kept-proven": "Garder le plan : aucune répartition de ce travail ne finit plus tôt.",
  "split/kept":
    "Garder le plan : rien de mieux n’a été trouvé. Aucune répartition ne peut finir plus de {$over :length} plus tôt.",
  "split/no-choice":
    "Il n’y a rien à choisir : aucune étape ne dit qui d’autre pourrait la faire (or), et aucune tâche n’est libre de sa place (order).",
  "split/no-plan": "Il n’y a aucun plan à améliorer : corrigez d’abord ce qui l’empêche d’être établi.",
  "split/step-given": "L’étape {$step} « {$text} » est faite par {$crew :list} au lieu de {$old :list}.",
  "split/steps-given":
    "Les étapes {$steps :list} sont faites par {$crew :list} au lieu de {$old :list}, toutes ensemble, car quelque chose reste dans une même main de la première à la dernière.",
  "split/task-first": "La tâche « {$task} » vient en premier.",
  "split/task-behind": "La tâche « {$task} » vient derrière « {$behind} ».",
  "split/gains": "Sans ce changement, le plan finirait {$time :advance} plus tard.",
  "split/needed": "Les autres changements ne peuvent pas être faits sans celui-ci.",
  "split/chain":
    ".input {$count :integer} .match $count one {{La fin du plan dépend de l’étape {$first}, qui est soulagée.}} * {{La fin du plan dépend d’une chaîne de {$count} étapes, de {$first} à {$last}, qui est soulagée.}}",
  "split/cost": "Ce que cela coûte",
  "split/changed-hands":
    ".input {$count :integer} .match $count 0 {{Aucune étape ne change de mains.}} one {{{$count} étape change de mains.}} * {{{$count} étapes changent de mains.}}",
  "split/metres": "Tous ensemble parcourent {$after :metres} au lieu de {$before :metres}.",
  "split/window-tighter":
    "Dans « {$window} », il reste à l’étape la plus serrée {$after :advance} au lieu de {$before :advance}.",
  "split/keep": "Garder le plan",
  "split/save": "Enregistrer comme révision {$revision}",
  "split/how-rest":
    "D’après les durées probables à partir de ce moment, sans tâches facultatives que personne n’a commencées. Ce qui est achevé ou en cours reste, le repli aussi. Rien n’est changé tant qu’un responsable ne saisit pas de modification.",
  "split/how":
    "D’après les durées probables, sans tâches facultatives, décisions comme attendu. Seules changent de mains les étapes qui disent qui d’autre pourrait les faire, et seules sont déplacées les tâches libres de leur place ; le repli reste. Rien n’est changé tant que vous n’enregistrez pas de révision.",
};
