import type { helpOfMapWords as english } from "../../english/screens/help-map.ts";
import type { Translated } from "../../translated.ts";

/** The help of the map. */
export const helpOfMapWords: Translated<typeof english> = {
  "guide/map": "Aide : la carte",
  "guide/map-places":
    "Un anneau est un lieu, et un anneau dans un cadre est un refuge. La case en dessous compte les objets qui s’y trouvent, avec ce qu’ils contiennent.",
  "guide/map-people":
    "Un disque plein est un membre d’équipage, avec une fiche qui dit ce qu’il fait. Son bord a les tirets et la teinte de son brin, et ondule tant qu’il attend.",
  "guide/map-lines":
    "La longe va de son ancrage le long des chemins parcourus. Elle ondule tant que son membre d’équipage attend, et son trait est épais là où elle est trop courte.",
  "guide/map-shared": "Un losange sur un chemin : les longes de plusieurs personnes y passent.",
  "guide/map-home":
    "Des points mènent de la personne à l’extérieur la plus éloignée d’un refuge jusqu’au plus proche. La fiche dit combien de mètres cela fait par les chemins, quels que soient les états qu’ils exigent.",
  "guide/map-light":
    "Le fond est plus sombre la nuit, et le bas de la carte dit Jour ou Nuit quand c’est connu.",
  "guide/map-ask":
    "Touchez un lieu ou une fiche, ou choisissez dans la liste sous la carte, pour lire tout ce qui en est connu ; un objet d’un lieu ou d’une personne peut être touché à son tour.",
  "guide/map-move":
    "Faites glisser, pincez, tournez la molette après un appui sur la carte, utilisez les boutons, ou au clavier les flèches, plus, moins et 0 pour le tout.",
  "guide/map-moment":
    "Pendant le suivi d’une sortie, la carte montre maintenant. Sur une chronologie et dans un bilan, elle montre le moment touché ou réglé sur son curseur.",
  "guide/map-positions":
    "Les positions sont celles du fichier, en mètres : vers la droite, vers le haut de la page, et en hauteur dans la vue de côté. La règle vaut pour les deux vues.",
  "guide/map-where":
    "Où se trouve quelqu’un découle de ses étapes : au lieu de la dernière, ou sur le chemin selon la part de sa durée qui est écoulée. La position de personne n’est mesurée.",
  "guide/map-left":
    "Ce qui reste d’une longe est sa longueur moins ce qui est sorti le long des chemins, jamais arrondi vers le haut. Le mou et les nœuds ne sont pas comptés.",
  "guide/map-sketch":
    "Un croquis, sans échelle : des lieux sans position ont été placés d’après les longueurs des chemins, ou positions et longueurs se contredisent. Les distances n’y disent rien ; les longueurs de la liste valent.",
  "guide/map-crowded":
    "Un numéro remplace un nom qui n’a pas la place ; la liste sous la carte donne le nom. Agrandissez la carte pour le lire à sa place.",
};
