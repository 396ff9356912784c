import type { storeWords as english } from "../../english/shell/store.ts";
import type { Translated } from "../../translated.ts";

/** What is wrong with the storage of a device, and with a file that was given to the app. */
export const storeWords: Translated<typeof english> = {
  "store/missing": "Ce navigateur n’offre pas de stockage aux applications.",
  "store/denied":
    "Ce navigateur ne laisse l’application rien enregistrer ; c’est peut-être une fenêtre privée.",
  "store/full": "Le stockage de cet appareil est plein.",
  "store/blocked": "Le stockage de cet appareil n’a pas répondu ; un autre onglet l’occupe peut-être.",
  "store/newer":
    "Le stockage a été créé par une version plus récente de cette application ; mettez l’application à jour.",
  "store/lost": "Le stockage de cette application a été fermé ou effacé par le navigateur.",
  "store/failed": "Le stockage de cet appareil a signalé une erreur.",
  "store/in-memory":
    "{$trouble :message} La sortie continue en mémoire seulement : exportez-la avant de fermer cette page.",
  "given/pasted": "texte collé",
  "given/too-large": "Le fichier dépasse {$most :number} MiB.",
  "given/unreadable": "Le fichier ne peut pas être lu ; c’est peut-être un dossier, ou il a été déplacé.",
  "given/not-text": "Le fichier n’est pas du texte en UTF-8.",
};
