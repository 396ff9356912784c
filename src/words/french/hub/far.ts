import type { farHubWords as english } from "../../english/hub/far.ts";
import type { Translated } from "../../translated.ts";

/** What a hub says of another one that it is linked with. */
export const farHubWords: Translated<typeof english> = {
  "far/unknown-hub": "Ce qui y répond n’est pas un hub connu de celui-ci.",
  "far/connection-lost": "La connexion à l’autre hub a été perdue.",
  "far/answered": "L’autre hub a répondu {$status :integer}.",
  "far/not-reached": "Le hub à {$origin} est injoignable ({$why :message}).",
  "far/other-certificate": "il montre un autre certificat que celui nommé dans --upstream",
  "far/own-entry-unreadable":
    "Une entrée de ce hub ne peut pas être lue par cette version : {$why :message}.",
  "far/no-relay": "L’invitation n’est pas destinée à un hub : créez-en une du rôle relais.",
  "far/itself": "C’est ce hub lui-même : donnez l’adresse d’un autre.",
  "far/other-hub": "Autre hub à {$origin} : {$what}",
  "far/entries-refused":
    ".input {$count :integer} .match $count one {{{$count} entrée a été refusée : {$why}}} * {{{$count} entrées ont été refusées : {$why}}}",
};
