import type { figureGapWords as english } from "../../english/screens/figure-gaps.ts";
import type { Translated } from "../../translated.ts";

/** The figures of a walk that are not known: what is missing, and why it can or cannot be set while the walk runs. */
export const figureGapWords: Translated<typeof english> = {
  "gap/title": "Non connu",
  "gap/not-known": "non connu",
  "gap/set-it": "Pourquoi ce n’est pas connu, et ce qu’on peut faire",
  "gap/turn-back": "Demi-tour",
  "gap/no-limit":
    "La procédure ne fixe pas de limite de durée ; il n’y a donc pas de marge. Une limite appartient à la procédure et ne peut pas être fixée pendant une sortie.",
  "gap/no-forecast":
    "Aucune prévision du reste n’est possible : ce qui reste ne tient plus dans aucune fenêtre, ou des étapes s’attendent l’une l’autre. Omettez une étape avec une raison, ou mettez fin à la sortie.",
  "gap/no-way-back":
    "Aucune heure de demi-tour ne peut être donnée, car aucun retour à un refuge n’est connu ou ne tient. Les lieux et les chemins appartiennent à la procédure et ne peuvent pas être fixés pendant une sortie.",
  "gap/no-end-of-supplies":
    "Aucune heure de demi-tour ne peut être donnée : il n’y a pas de limite de durée, et d’après la consommation planifiée aucun consommable ne s’épuise. Deux relevés à cinq minutes d’écart au moins donnent une consommation.",
  "gap/nothing-runs-out":
    "Aucune heure de demi-tour ne peut être donnée : la procédure ne fixe ni limite de durée ni consommables, et ni l’un ni l’autre ne peut être fixé pendant une sortie.",
  "gap/never-read":
    "Jamais relevé, la consommation planifiée compte donc : {$supplies :list}. Un relevé donne ce qu’il y a vraiment.",
  "gap/supply-of": "{$crew} {$supply}",
  "gap/no-light":
    "Les heures de {$windows :list} ne sont pas connues : la sortie a été ouverte sans orbite ni site. Un responsable en choisit un ci-dessous, pour tous les appareils, ou sur la chronologie avant l’ouverture d’une sortie.",
  "gap/windows-from-start": "Les heures de {$windows :list} sont connues quand l’horloge tourne.",
  "gap/not-started":
    "L’horloge n’a pas été lancée. Jusque-là, toutes les heures sont celles du plan, comptées depuis PET 0.",
  "gap/enter-reading": "Saisir un relevé",
  "gap/marker-enters": "Cette tablette observe : la personne qui marque saisit les relevés.",
};
