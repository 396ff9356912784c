import type { filesWords as english } from "../../english/command-line/files.ts";
import type { Translated } from "../../translated.ts";

/** Why a file on a machine cannot be read or written. */
export const filesWords: Translated<typeof english> = {
  "file/standard-input": "entrée standard",
  "file/not-read": "« {$file :message} » ne peut pas être lu : {$why :message}.",
  "file/not-written": "« {$file :message} » ne peut pas être écrit : {$why :message}.",
  "file/not-there": "ce fichier n’existe pas",
  "file/is-directory": "c’est un dossier, et non un fichier",
  "file/not-this-user": "cet utilisateur ne peut pas l’ouvrir",
  "file/read-only": "le disque est en lecture seule",
  "file/disk-full": "le disque est plein",
  "file/system-reports": "le système signale {$code}",
  "file/system-error": "le système signale une erreur",
  "file/not-utf-8": "ce n’est pas du texte en UTF-8",
  "file/larger-than-mebibytes": "il dépasse {$most :number} MiB",
  "file/larger-than-bytes": "il dépasse {$most :integer} octets",
  "cli/no-texts":
    "La procédure n’a pas de textes en « {$tag} ». Il y a {$languages :list}, et « author » pour ceux d’origine.",
  "cli/no-texts-but-author":
    "La procédure n’a pas de textes en « {$tag} », ni d’autres que ceux de l’auteur.",
};
