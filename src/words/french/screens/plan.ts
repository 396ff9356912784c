import type { planWords as english } from "../../english/screens/plan.ts";
import type { Translated } from "../../translated.ts";

/** A plan along time, what it would be otherwise, and the light it is made with. */
export const planWords: Translated<typeof english> = {
  "plan/revision-kept": "La révision {$revision} est sur l’étagère.",
  "plan/revision-not-kept": "La nouvelle révision n’a pas pu être conservée sur cet appareil.",
  "plan/timeline-as-planned": "Chronologie planifiée",
  "what-if/title": "Essai",
  "what-if/choose": "Choisissez une étape dans l’image pour essayer une autre durée ou une autre personne.",
  "what-if/tasks": "Tâches exécutées",
  "what-if/back": "Revenir au fichier",
  "what-if/save": "Enregistrer comme révision {$revision}",
  "what-if/within-limit": "{$share :chance} dans la limite",
  "what-if/over": "{$time :length} de trop",
  "what-if/margin": "marge {$time :margin}",
  "what-if/in-file": "Dans le fichier : fin {#b}{$finish :finish}{/b}",
  "what-if/in-file-none": "Dans le fichier : {#b}pas de fin{/b}",
  "what-if/tried": "Essai : fin {#b}{$finish :finish}{/b}",
  "what-if/tried-later": "Essai : fin {#b}{$finish :finish}{/b} ({$by :length} plus tard)",
  "what-if/tried-earlier": "Essai : fin {#b}{$finish :finish}{/b} ({$by :advance} plus tôt)",
  "what-if/tried-same": "Essai : fin {#b}{$finish :finish}{/b} (inchangée)",
  "what-if/tried-none": "Essai : {#b}pas de fin{/b}",
  "what-if/takes": "Dure {#b}{$time :length}{/b}",
  "what-if/takes-not-as-file": "Dure {#b}{$time :length}{/b}, dans le fichier {$likely :length}",
  "what-if/done-by": "Faite par",
  "what-if/step-takes": "{$step} dure {$time :length}",
  "what-if/step-done-by": "{$step} est faite par {$crew}",
  "what-if/task-left-out": "« {$task} » n’est pas retenue",
  "what-if/task-brought-in": "« {$task} » est retenue",
  "what-if/get-ahead": "{$number :integer} {$task} (facultative)",
  "what-if/decided": "{$decision} : issue {$outcome}",
  "what-if/move-title": "Déplacer une tâche",
  "what-if/move-task": "Tâche à déplacer",
  "what-if/move-behind": "À placer",
  "what-if/place-first": "tout au début",
  "what-if/move": "La placer là",
  "what-if/swap-title": "Échanger deux personnes",
  "what-if/swap-task": "Dans la tâche",
  "what-if/swap-one": "L’une",
  "what-if/swap-other": "L’autre",
  "what-if/swap": "Les échanger",
  "what-if/shift-title": "Fenêtres plus tôt ou plus tard",
  "what-if/shift-window": "{$window}, minutes plus tard (négatif : plus tôt)",
  "what-if/shift-start":
    "Les fenêtres qui viennent de l’orbite ou du site se déplacent avec le début, choisi plus haut.",
  "what-if/task-behind": "« {$task} » vient derrière « {$behind} »",
  "what-if/task-first": "« {$task} » vient en premier",
  "what-if/task-swapped": "{$one} et {$other} échangent leurs places dans « {$task} »",
  "what-if/window-later": "{$window} vient {$by :length} plus tard",
  "what-if/window-earlier": "{$window} vient {$by :advance} plus tôt",
  "what-if/pace": "Tout prend {$pace :integer} % de sa durée",
  "what-if/changes": "Essayé : {$changes}.",
  "what-if/no-finding-changes": "Aucun constat n’apparaît ni ne disparaît.",
  "what-if/new-findings": "Nouveaux constats",
  "what-if/findings-gone": "Constats qui disparaissent",
  "light/spans-taken":
    ".input {$count :integer} .match $count one {{{$count} intervalle repris de {$file :message} ; ceux qui se chevauchaient ont été réunis.}} * {{{$count} intervalles repris de {$file :message} ; ceux qui se chevauchaient ont été réunis.}}",
  "light/row-left-out": "La ligne {$row :integer} a été écartée : {$why}.",
  "light/file-problem": "{$file :message} : {$why :message}",
  "light/listed-windows": "Fenêtres listées",
  "light/take-times": "Reprendre les heures de {$window} d’une liste CSV",
  "light/light-and-start": "Lumière et début",
  "light/start": "Début (PET 0), UTC",
  "light/refused": "{$file :message} : refusé. {$why :message}.",
  "light/day-and-night": "Jour et nuit",
  "light/not-known":
    "Le jour et la nuit ne sont pas connus : choisissez un fichier d’orbite ou un site à la surface.",
  "light/decays":
    "D’après ce jeu d’éléments, l’orbite décroît en moins d’un jour : les heures sont inutilisables.",
  "light/choose-orbit": "Choisir un fichier d’orbite",
  "light/forget": "L’oublier",
  "light/comes-along":
    "Cette orbite vient avec la procédure. Elle est inventée, comme la procédure ; choisissez-en une autre ou retirez-la.",
  "light/take-off": "La retirer",
  "light/take-along": "Utiliser l’orbite fournie avec la procédure",
  "light/site": "Un site à la surface",
  "light/latitude": "Latitude, ° nord",
  "light/longitude": "Longitude, ° est",
  "light/contact-sites": "Stations au sol pour le contact",
  "light/height": "Altitude, m",
  "light/mask": "Élévation minimale (masque), °",
  "light/add-site": "Ajouter la station",
  "light/site-off": "Retirer cette station",
  "light/use-site": "Utiliser le lever et le coucher du Soleil ici",
  "light/when-to-go-out": "Quand sortir",
  "light/minute-by-minute": "Début, minute par minute",
  "light/chance": "Chaque étape tient dans ses fenêtres dans {$fits :chance} des tirages (durées PERT-bêta).",
  "light/chance-within":
    "Chaque étape tient dans ses fenêtres dans {$fits :chance} des tirages, et la sortie est dans la limite dans {$within :chance} (durées PERT-bêta).",
  "light/window-margin": "{$window} : marge {$margin :margin}, à l’étape {$step}",
  "light/shortest": "La sortie la plus courte de ce jour : {$start}",
  "light/take-it": "La prendre",
  "light/scan-how":
    "La ligne est le PET de la fin pour chaque début ; le gris est l’obscurité ; le trait épais est la limite de durée.",
  "light/curve-how":
    "La ligne pointillée est la probabilité que chaque étape tienne dans ses fenêtres, d’après {$samples :integer} tirages toutes les {$minutes :integer} minutes.",
  "light/curve-within-how":
    "La ligne pointillée est la probabilité que chaque étape tienne dans ses fenêtres et que la sortie soit dans la limite, d’après {$samples :integer} tirages toutes les {$minutes :integer} minutes.",
  "light/percent": "{$percent :integer} %",
  "light/scan-no-fit": "Ce jour-là, aucun début ne fait tenir chaque étape dans ses fenêtres.",
  "light/scan-none":
    "La procédure ne peut pas être planifiée telle quelle ; les débuts ne peuvent donc pas être comparés.",
  "light/start-no-matter":
    "Aucune étape ne dépend d’une fenêtre liée à l’heure ; le plan est donc le même quelle que soit l’heure du début.",
  "light/start-unknown":
    "Des étapes dépendent du jour et de la nuit, qui ne sont pas connus : choisissez d’où ils viennent pour comparer les débuts.",
  "light/first-opens": "{$window} s’ouvre pour la première fois le {$at :utc form=minute} UTC.",
  "light/go-there": "Aller à ce jour",
  "light/fits-nothing":
    "début {$at :utc form=minute} UTC : une étape ne tient dans aucune fenêtre en un jour.",
  "light/start-waits":
    "début {$at :utc form=minute} UTC : fin à PET {$finish :finish}, {$waits :length} d’attente de fenêtres.",
  "light/start-waits-margin":
    "début {$at :utc form=minute} UTC : fin à PET {$finish :finish}, {$waits :length} d’attente de fenêtres, marge {$margin :margin}.",
  "light/start-waits-over":
    "début {$at :utc form=minute} UTC : fin à PET {$finish :finish}, {$waits :length} d’attente de fenêtres, {$margin :length} au-delà de la limite.",
  "light/start-straight":
    "début {$at :utc form=minute} UTC : fin à PET {$finish :finish}, aucune attente de fenêtre.",
  "light/start-straight-margin":
    "début {$at :utc form=minute} UTC : fin à PET {$finish :finish}, aucune attente de fenêtre, marge {$margin :margin}.",
  "light/start-straight-over":
    "début {$at :utc form=minute} UTC : fin à PET {$finish :finish}, aucune attente de fenêtre, {$margin :length} au-delà de la limite.",
  "plan/finish": "Fin {$finish :finish form=second} d’après les durées probables",
  "plan/finish-within":
    "Fin {$finish :finish form=second} d’après les durées probables, {$margin :margin} avant la limite",
  "plan/finish-over":
    "Fin {$finish :finish form=second} d’après les durées probables, {$over :length} au-delà de la limite",
};
