import type { amendmentWords as english } from "../../english/screens/amendments.ts";
import type { Translated } from "../../translated.ts";

/** What is said of amendments of a running walk: why one has no effect, and what one does. */
export const amendmentWords: Translated<typeof english> = {
  "walk/amended": "Le plan a été modifié",
  "walk/amended-because": "Le plan a été modifié : {$reason}",
  "walk/step-dropped": "une modification a retiré « {$step} » du plan",
  "amend/changes-nothing": "elle ne change rien",
  "amend/unreadable": "ses changements ne peuvent pas être lus : {$why :message}",
  "amend/cannot-apply": "le changement {$number :integer} ne peut pas être fait : {$why :message}",
  "amend/unsound": "elle rendrait la procédure inutilisable : {$why :message}",
  "amend/begun-dropped": "« {$step} » a commencé ou est terminée, et ne peut pas être retirée du plan",
  "amend/entered-dropped":
    "des entrées de la sortie mentionnent « {$step} », qui ne peut donc pas être retirée du plan ; elle peut être omise avec une raison",
  "amend/begun-moved": "« {$step} » a commencé ou est terminée, et ne peut pas être déplacée",
  "amend/begun-changed":
    "« {$step} » a commencé, et garde ses exécutants, son lieu, sa décision et ce qu’elle déplace",
  "amend/complete-changed": "« {$step} » est terminée, et ne peut pas être changée",
  "amend/before-begun":
    "« {$step} » viendrait avant « {$begun} », qui a commencé ou est terminée, parmi les étapes de {$crew}",
  "amend/decision-gone": "la décision « {$decision} » a été prise, et doit rester telle quelle",
  "amend/named-gone": "des entrées de la sortie nomment « {$id} », qui doit rester dans la procédure",
  "amend/no-order": "aucun ordre des étapes restantes n’est possible : {$why :message}",
  "amend/no-forecast": "Le reste de la sortie ne peut plus être planifié.",
  "amend/unfit": "« {$step} » ne tient plus dans aucune fenêtre.",
  "amend/over-limit":
    "D’après les durées probables, la sortie finit après sa limite : la marge est de {$margin :margin}.",
  "amend/no-home": "Le chemin du retour ne peut plus être établi.",
  "amend/past-redline":
    "{$crew} : {$supply} est au seuil rouge avant que la dernière étape soit faite ; la marge est de {$margin :margin}.",
  "amend/not-there": "cette modification n’existe pas ou est sans effet",
  "amend/already-seen": "cet appareil a déjà vu la modification",
};
