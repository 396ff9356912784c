import type { helpOfBriefWords as english } from "../../english/screens/help-brief.ts";
import type { Translated } from "../../translated.ts";

/** The page of help of the briefing. */
export const helpOfBriefWords: Translated<typeof english> = {
  "guide/brief": "Le briefing",
  "guide/brief-play":
    "La carte, la légende et la bande de la chronologie sont jouées ensemble, à 1 à 120 fois la vitesse de la sortie. Les boutons mènent à l’étape et à la tâche suivantes ou précédentes ; le curseur et la bande mènent à tout moment.",
  "guide/brief-keys":
    "Au clavier : la barre d’espace lance et met en pause, les flèches gauche et droite vont par étape, Page préc. et Page suiv. par tâche.",
  "guide/brief-audience":
    "« Fenêtre pour l’auditoire » ouvre une seconde fenêtre pour un second écran, qui montre ce que vous montrez. Votre propre fenêtre a alors vos notes, la suite, le temps restant et les prochaines alertes. La fenêtre de l’auditoire le dit quand la vôtre est fermée.",
  "guide/brief-quiz":
    "Avec le quiz, le briefing s’arrête avant une étape commune et demande qui attend où et ce que chacun porte. Rien n’est noté ni conservé.",
  "guide/brief-spoken":
    "Les légendes lues à voix haute n’utilisent qu’une voix de cet appareil, s’il en a une. La légende écrite est alors donnée par tâche.",
  "guide/brief-paper":
    "Le storyboard s’imprime en A4 et en letter, paysage. Le fichier peut être donné à tous : il se joue sans ce programme et sans réseau.",
  "guide/brief-figures":
    "Tout ce qui est montré est le plan, d’après les durées probables, ou la sortie telle qu’elle a été saisie ; au-delà de 60×, les légendes sont données par tâche, car les étapes passent trop vite pour être lues.",
  "guide/brief-flown":
    "Depuis le bilan, le briefing montre ce qui s’est passé, jusqu’à la dernière entrée ou jusqu’à maintenant.",
  "guide/brief-trouble":
    "Quand un lieu n’est pas sur la carte, la procédure ne dit pas où quelqu’un se trouve. Quand le jour et la nuit manquent, choisissez la lumière et le début sur la chronologie du plan.",
};
