import type { findingsOfFileWords as english } from "../../english/screens/findings-file.ts";
import type { Translated } from "../../translated.ts";

/** What the checker says of a file that is no sound procedure: its JSON, the shape of its parts, its size. */
export const findingsOfFileWords: Translated<typeof english> = {
  "file/syntax-invalid-symbol": "JSON non valide : il y a ici un mot que JSON ne connaît pas.",
  "file/syntax-invalid-number-format": "JSON non valide : ce n’est pas un nombre tel que JSON l’écrit.",
  "file/syntax-property-name-expected":
    "JSON non valide : une clé entre guillemets doubles est attendue ici.",
  "file/syntax-value-expected": "JSON non valide : une valeur est attendue ici.",
  "file/syntax-colon-expected": "JSON non valide : il manque ici un deux-points.",
  "file/syntax-comma-expected": "JSON non valide : il manque ici une virgule.",
  "file/syntax-close-brace-expected": "JSON non valide : il manque ici une accolade fermante \\}.",
  "file/syntax-close-bracket-expected": "JSON non valide : il manque ici un crochet fermant ].",
  "file/syntax-end-of-file-expected": "JSON non valide : le JSON finit ici, mais du texte suit.",
  "file/syntax-comment": "JSON non valide : JSON n’a pas de commentaires.",
  "file/syntax-unexpected-end-of-string": "JSON non valide : une chaîne n’est pas fermée.",
  "file/syntax-unexpected-end-of-number": "JSON non valide : un nombre est coupé.",
  "file/syntax-invalid-unicode": "JSON non valide : ce n’est pas une séquence d’échappement Unicode.",
  "file/syntax-invalid-escape-character":
    "JSON non valide : cette séquence d’échappement n’existe pas en JSON.",
  "file/syntax-invalid-character": "JSON non valide : un caractère de commande se trouve dans une chaîne.",
  "file/syntax-other": "JSON non valide : ce n’est pas du JSON.",
  "file/doubled-key": "La clé « {$key} » figure deux fois dans un même objet ; une seule peut compter.",
  "file/empty": "Le fichier est vide.",
  "file/not-json": "JSON non valide.",
  "file/nested-too-deeply": "Le JSON est imbriqué trop profondément pour être une procédure.",
  "file/other-format": "« {$format} » n’est pas une procédure de ce programme ; il lit « {$read} ».",
  "file/newer-version":
    "Le fichier est au format de version {$version}, plus récent que ce programme, qui lit jusqu’à la version {$read :integer}. Mettez le programme à jour.",
  "file/key-of-newer-format":
    "La clé « {$key} » appartient à « {$newer} », et le fichier se dit « {$older} ». Changez la ligne du format en « {$newer} ».",
  "file/too-many-bytes":
    "Le fichier fait {$size :number minimumFractionDigits=1 maximumFractionDigits=1} MiB ; au plus {$most :number} MiB sont lus.",
  "file/too-many-steps": "La procédure a {$count :integer} étapes ; {$most :integer} au plus sont lues.",
  "file/too-many-crew":
    "La procédure a {$count :integer} membres d’équipage ; {$most :integer} au plus sont lus.",
  "file/too-many-items": "La procédure a {$count :integer} objets ; {$most :integer} au plus sont lus.",
  "file/too-many-decisions":
    "La procédure a {$count :integer} décisions ; {$most :integer} au plus sont lues.",
  "file/part-entry": "L’élément {$index :integer}",
  "file/part-key": "« {$key} »",
  "file/part-file": "Le fichier",
  "file/missing-key": "Il manque la clé {$part :message}.",
  "file/kind-string": "un texte",
  "file/kind-number": "un nombre",
  "file/kind-boolean": "true ou false",
  "file/kind-list": "une liste",
  "file/kind-object": "un objet",
  "file/kind-int": "un nombre entier",
  "file/kind-null": "null",
  "file/wrong-kind": "{$part :message} doit être {$kind :message}, et non {$found :message}.",
  "file/form-id": "fait de minuscules, de chiffres et de tirets, avec une lettre ou un chiffre en premier",
  "file/form-duration": "une durée ISO 8601 en jours, heures, minutes et secondes, telle que PT1H5M",
  "file/form-short-duration": "une durée de 366 jours au plus",
  "file/form-instant": "un instant RFC 3339 avec un décalage ou Z",
  "file/form-real-instant": "un instant qui existe",
  "file/form-encoded-picture": "une image en Base64",
  "file/form-location":
    'un emplacement : \\{"place": …\\}, \\{"crew": …\\}, \\{"crews": […]\\} ou \\{"item": …\\}',
  "file/form-stand": 'une liste de membres d’équipage, ou \\{"by", "time"\\}',
  "file/form-time": 'une durée telle que « PT5M », ou \\{"low", "likely", "high"\\}',
  "file/form-span":
    '\\{"from", "to"\\}, tous deux des PET tels que « PT10M » ou tous deux des instants avec un décalage ou Z',
  "file/form-predecessor": 'l’identifiant d’une étape, ou \\{"step", "lag", "within"\\}',
  "file/must-be": "{$part :message} doit être {$form :message}.",
  "file/must-be-says": "{$part :message} doit être {$form :message} (il est écrit « {$says} »).",
  "file/must-be-one-of": "{$part :message} doit être {$known :list of=any style=chained}.",
  "file/must-be-one-of-says":
    "{$part :message} doit être {$known :list of=any style=chained} (il est écrit « {$says} »).",
  "file/too-small": "{$part :message} doit être au moins {$least :number}.",
  "file/too-short": "{$part :message} ne doit pas avoir une longueur inférieure à {$least :number}.",
  "file/must-not-be-empty": "{$part :message} ne doit pas être vide.",
  "file/too-big": "{$part :message} doit être au plus {$most :number}.",
  "file/too-long": "{$part :message} a une longueur supérieure à {$most :number}.",
  "file/no-form": "{$part :message} n’a aucune des formes admises.",
  "file/not-valid": "{$part :message} n’est pas valide : {$why}.",
  "file/unknown-key": "La clé « {$key} » n’est pas connue ici.",
  "file/unknown-key-meant": "La clé « {$key} » n’est pas connue ici. S’agit-il de « {$meant} » ?",
  "file/no-language": "« {$tag} » n’est pas une étiquette de langue (BCP 47), comme fr ou pt-BR.",
  "file/no-language-meant": "L’étiquette de langue « {$tag} » s’écrit « {$meant} » (BCP 47).",
  "file/too-many-languages":
    "La procédure a des textes dans {$count :integer} autres langues ; {$most :integer} au plus sont lues.",
};
