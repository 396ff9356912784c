import type { writeMapWords as english } from "../../english/screens/write-map.ts";
import type { Translated } from "../../translated.ts";

/** The map on which places are put, and the pictures of a procedure. */
export const writeMapWords: Translated<typeof english> = {
  "write/map": "Lieux sur la carte",
  "write/map-not-yet":
    "La carte peut être dessinée dès que la procédure n’a plus de constat de niveau erreur.",
  "write/map-place": "Lieu à déplacer",
  "write/map-step": "De combien",
  "write/map-metres": "{$metres :metres}",
  "write/map-move": "Déplacer le lieu",
  "write/map-left": "← Gauche",
  "write/map-right": "→ Droite",
  "write/map-up": "↑ Haut",
  "write/map-down": "↓ Bas",
  "write/map-how":
    "Touchez un lieu pour le choisir, puis un endroit libre pour l’y placer. Les boutons, et les flèches du clavier quand l’un d’eux a le focus, le déplacent. Les hauteurs se tapent dans sa fiche.",
  "write/map-says":
    ".input {$count :integer} .match $count one {{Une carte d’un seul lieu, vue de dessus.}} * {{Une carte de {$count} lieux, vue de dessus.}}",
  "write/map-ways": "Chemins depuis « {$place} »",
  "write/map-way": "{$place} : {$length :metres} par le chemin, {$straight :metres} en ligne droite",
  "write/way-out": "Retirer le chemin : {$one} – {$other}",
  "write/map-mode": "Ce que fait un appui sur la carte",
  "write/map-mode-move": "Déplacer des lieux",
  "write/map-mode-way": "Chemin",
  "write/map-mode-place": "Nouveau lieu",
  "write/map-how-way": "Touchez les deux lieux que le chemin joint, ou choisissez-les ici.",
  "write/map-how-place":
    "Touchez un endroit libre : un nouveau lieu y est placé. Son nom se tape dans sa fiche.",
  "write/map-place-beside": "Le placer à côté de « {$place} »",
  "write/way": "Un chemin entre deux lieux",
  "write/way-from": "De",
  "write/way-to": "À",
  "write/way-none": "choisir un lieu",
  "write/way-length": "Longueur par le chemin, m",
  "write/way-measured":
    "{$length :metres} en ligne droite entre les deux, d’après leurs positions. Par le chemin, ce peut être plus.",
  "write/way-shorter": "C’est plus court que la ligne droite entre les deux.",
  "write/way-not-measured": "Cela ne peut pas être mesuré : l’un d’eux n’a pas de position dans le fichier.",
  "write/way-time": "Durée pour une personne, minutes",
  "write/way-take": "Prendre {$time :length form=second}",
  "write/way-take-from":
    "{$time :length form=second} correspond à l’allure du chemin le plus lent de cette procédure, {$one} – {$other}.",
  "write/way-no-pace": "Aucun chemin de cette procédure n’a de durée ; il n’y a donc pas de référence.",
  "write/way-without-time": "Sans durée, personne n’est planifié sur ce chemin.",
  "write/way-put": "Ajouter le chemin",
  "write/way-is-in": "Le chemin est ajouté : {$one} – {$other}.",
  "write/no-picture": "Ce n’est pas une image qu’une procédure peut contenir : PNG, JPEG, WebP ou SVG.",
  "write/pictures-how":
    "PNG, JPEG, WebP ou SVG, jusqu’à 400 kB chacune et 3 MB ensemble. Les étapes nomment les images montrées avec elles.",
  "write/map-no-ways": "Aucun chemin ne part de « {$place} ».",
};
