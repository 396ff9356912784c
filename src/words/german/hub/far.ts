import type { farHubWords as english } from "../../english/hub/far.ts";
import type { Translated } from "../../translated.ts";

/** What a hub says of another one that it is linked with. */
export const farHubWords: Translated<typeof english> = {
  "far/unknown-hub": "Was dort antwortet, ist kein Hub, den dieser kennt.",
  "far/connection-lost": "Die Verbindung zum anderen Hub ist abgerissen.",
  "far/answered": "Der andere Hub hat mit {$status :integer} geantwortet.",
  "far/not-reached": "Der Hub bei {$origin} ist nicht erreichbar ({$why :message}).",
  "far/other-certificate": "er zeigt ein anderes Zertifikat als das in --upstream genannte",
  "far/own-entry-unreadable": "Ein Eintrag dieses Hubs ist für diese Version nicht lesbar: {$why :message}.",
  "far/no-relay": "Die Einladung gilt nicht für einen Hub: Erzeugen Sie eine mit der Rolle Relais.",
  "far/itself": "Das ist dieser Hub selbst: Geben Sie die Adresse eines anderen an.",
  "far/other-hub": "Anderer Hub bei {$origin}: {$what}",
  "far/entries-refused":
    ".input {$count :integer} .match $count one {{{$count} Eintrag wurde abgelehnt: {$why}}} * {{{$count} Einträge wurden abgelehnt: {$why}}}",
};
