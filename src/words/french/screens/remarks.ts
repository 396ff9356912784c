import type { remarkWords as english } from "../../english/screens/remarks.ts";
import type { Translated } from "../../translated.ts";

/** What readers of a procedure remark, and the panel in which they do. */
export const remarkWords: Translated<typeof english> = {
  "remarks/no-json": "Ce n’est pas une remarque.",
  "remarks/newer": "Elle vient d’une version plus récente du programme.",
  "remarks/unusable": "Il lui manque un « {$key} » utilisable.",
  "remarks/says-nothing": "C’est un commentaire qui ne dit rien.",
  "remarks/names-nothing": "Elle répond à une remarque sans dire laquelle.",
  "remarks/too-many": "Il y a plus de {$most :integer} remarques. Le reste a été écarté.",
  "remarks/open": "{$name} ({$role}) : {$says}",
  "remarks/open-before": "{$name} ({$role}), sur la révision {$revision} : {$says}",
  "remarks/open-of-gone-step": "{$name} ({$role}), sur l’étape « {$step} », qui n’existe plus : {$says}",
  "remarks/title": "Remarques",
  "remarks/button":
    ".input {$count :integer} .match $count 0 {{Remarques}} one {{Remarques ({$count} ouverte)}} * {{Remarques ({$count} ouvertes)}}",
  "remarks/advises":
    "Une remarque n’approuve rien. C’est le processus de votre organisation qui décide si cette procédure peut être exécutée, et non cette page.",
  "remarks/who": "Votre nom",
  "remarks/role": "Le rôle dans lequel vous parlez",
  "remarks/needs-who": "Dites d’abord qui vous êtes et dans quel rôle vous parlez.",
  "remarks/about": "À propos de",
  "remarks/whole": "toute la révision",
  "remarks/step": "{$number} {$action}",
  "remarks/gone-step": "étape « {$step} », qui n’existe plus",
  "remarks/comment": "Commentaire",
  "remarks/add": "Ajouter le commentaire",
  "remarks/agree": "Donner mon accord à ce texte",
  "remarks/agree-how":
    "Un accord vaut pour ce texte seul. Dès que le fichier change, il ne vaut plus, et cette page le dit.",
  "remarks/no-digest":
    "Personne ne peut donner d’accord ici : cette page n’est pas servie de façon sûre, et le texte ne peut donc pas être distingué d’autres. Les commentaires sont possibles.",
  "remarks/agreed": "Qui est d’accord",
  "remarks/nobody": "Personne n’a donné son accord à ce texte.",
  "remarks/agreement": "{$name} ({$role}) a donné son accord pour : {$what}",
  "remarks/holds": "vaut pour ce texte",
  "remarks/holds-not": "donné à un autre texte (révision {$revision}), ne vaut pas pour celui-ci",
  "remarks/withdraw": "Reprendre",
  "remarks/withdraw-whose": "Reprendre l’accord donné par {$name} pour : {$what}",
  "remarks/open-comments": "Commentaires ouverts",
  "remarks/no-open": "Aucun commentaire n’est ouvert.",
  "remarks/resolved-comments": "Commentaires réglés",
  "remarks/of-revision": "{$at :utc} UTC, révision {$revision}",
  "remarks/resolve": "Régler",
  "remarks/resolve-whose": "Régler : {$says}",
  "remarks/reopen": "Rouvrir",
  "remarks/reopen-whose": "Rouvrir : {$says}",
  "remarks/resolved-by": "réglé par {$names :list}",
  "remarks/idle":
    ".input {$count :integer} .match $count one {{{$count} remarque est sans effet : elle nomme ce qui n’est pas ici, ou reprend ce qui est à quelqu’un d’autre.}} * {{{$count} remarques sont sans effet : elles nomment ce qui n’est pas ici, ou reprennent ce qui est à quelqu’un d’autre.}}",
  "remarks/conflicting":
    ".input {$count :integer} .match $count one {{{$count} remarque a l’identifiant d’une autre, et ne compte pas.}} * {{{$count} remarques ont des identifiants en commun et diffèrent : aucune ne compte.}}",
  "remarks/export": "Enregistrer dans un fichier",
  "remarks/import": "Importer un fichier",
  "remarks/taken-in":
    ".input {$added :integer} .match $added one {{{$added} remarque importée, déjà ici : {$known :integer}. Chacune est à côté de sa procédure.}} * {{{$added} remarques importées, déjà ici : {$known :integer}. Chacune est à côté de sa procédure.}}",
  "remarks/line": "Ligne {$line :integer} : {$why :message}",
  "remarks/not-kept": "La remarque n’a pas pu être conservée sur cet appareil : {$why :message}",
};
