import type { linkWords as english } from "../../english/screens/link.ts";
import type { Translated } from "../../translated.ts";

/** Joining, sharing and following a walk over a hub. */
export const linkWords: Translated<typeof english> = {
  "link/clock-set-back":
    "L’horloge de cet appareil a été reculée de {$by :length}. Les heures de cette sortie continuent comme si elle ne l’avait pas été.",
  "link/clock-set-ahead":
    "L’horloge de cet appareil a été avancée de {$by :length}. Les heures de cette sortie continuent comme si elle ne l’avait pas été.",
  "link/join-title": "Rejoindre une sortie",
  "link/join-what": "Avec le code que montre son responsable",
  "link/fetching": "Récupération de la sortie auprès du hub…",
  "link/fetching-of":
    "Récupération de la sortie auprès du hub : {$come :integer} entrées sur {$of :integer}…",
  "link/asking-for-walk": "Cette sortie n’est pas sur cet appareil. Elle est demandée au hub…",
  "link/no-walk-no-hub":
    "Cette sortie n’est pas sur cet appareil, et aucun hub dont elle pourrait revenir ne répond. Elle est redemandée toutes les 10 secondes.",
  "link/no-walk-no-member":
    "Cette sortie n’est pas sur cet appareil, et le hub ne connaît ce navigateur dans aucune sortie de ce nom. Si elle a été suivie ici, ce que l’appareil conservait a été effacé : rejoignez la sortie avec un nouveau code, et tout ce qui était arrivé au hub revient.",
  "link/no-walk-other-name":
    "Cette sortie n’est pas sur cet appareil. Elle a été suivie ici avant que ce que l’appareil conservait soit effacé, et l’appareil a commencé d’autres sorties depuis : rejoignez la sortie avec un nouveau code, et tout ce qui était arrivé au hub revient.",
  "link/who-uses": "Qui utilise cette tablette",
  "link/asking": "Demande au hub…",
  "link/over-the-gap": "De l’autre côté",
  "link/nobody-known": "Le hub n’a pas encore dit qui suit.",
  "link/unnamed": "sans nom",
  "link/this-tablet": "cette tablette",
  "link/take-off": "Retirer",
  "link/take-all-off": "Retirer tout le monde…",
  "link/take-all-off-question": "Retirer tous les autres de cette sortie ?",
  "link/take-all-off-how":
    ".input {$others :integer} .match $others 0 {{Pour le cas où un code ou une tablette est en de mauvaises mains. Personne d’autre n’est connu dans la sortie ; tous les codes prennent fin. Ce qui a été saisi reste.}} one {{Pour le cas où un code ou une tablette est en de mauvaises mains. {$others} autre appareil ou hub continue seul, et rien n’en vient plus avant qu’il ait un nouveau code ; tous les codes prennent fin. Ce qui a été saisi reste.}} * {{Pour le cas où un code ou une tablette est en de mauvaises mains. {$others} autres appareils ou hubs continuent seuls, et rien n’en vient plus avant qu’ils aient un nouveau code ; tous les codes prennent fin. Ce qui a été saisi reste.}}",
  "link/take-all-off-now": "Retirer tout le monde",
  "link/keep-all": "Les garder",
  "link/all-taken-off":
    ".input {$count :integer} .match $count 0 {{Personne d’autre n’était dans la sortie. Tous les codes ont pris fin.}} one {{{$count} appareil a été retiré. Tous les codes ont pris fin.}} * {{{$count} appareils ont été retirés. Tous les codes ont pris fin.}}",
  "link/take-follower-off": "Retirer {$follower} de la sortie",
  "link/take-unnamed-off": "Retirer ce participant de la sortie",
  "link/offer-marker": "Marqueur",
  "link/offer-marker-may": "marque étapes, mesures, notes",
  "link/offer-watcher": "Observateur",
  "link/offer-watcher-may": "lit seulement",
  "link/offer-trainer": "Instructeur",
  "link/offer-trainer-may": "voit tout, et déclenche des imprévus dans une répétition",
  "link/offer-lead": "Responsable",
  "link/offer-lead-may": "peut aussi clore la sortie et en admettre d’autres",
  "link/no-code": "Le hub n’a pas donné de code : {$why}",
  "link/invite": "Admettre une autre tablette",
  "link/role": "Rôle",
  "link/how-many-tablets": "Combien de tablettes il admet",
  "link/code-for":
    ".input {$count :integer} .match $count one {{Valable pour {$count} tablette.}} * {{Valable pour {$count} tablettes, une fois chacune.}}",
  "link/make-code": "Créer un code",
  "link/qr-code": "L’adresse où rejoindre la sortie, en code QR",
  "link/lets-in-as-lead": "Admet comme responsable encore pendant {$left :margin}.",
  "link/lets-in-as-marker": "Admet comme marqueur encore pendant {$left :margin}.",
  "link/lets-in-as-watcher": "Admet comme observateur encore pendant {$left :margin}.",
  "link/lets-in-as-trainer": "Admet comme instructeur encore pendant {$left :margin}.",
  "link/lets-in-as-relay": "Admet comme relais encore pendant {$left :margin}.",
  "link/code-expired": "Ce code a expiré : créez-en un autre.",
  "link/open-codes": "Codes encore valables",
  "link/open-code":
    ".input {$count :integer} .match $count one {{Comme {$role} : encore {$count} tablette, pendant {$left :margin}.}} * {{Comme {$role} : encore {$count} tablettes, pendant {$left :margin}.}}",
  "link/end-code": "Mettre fin à ce code",
  "link/codes-not-told": "Le hub n’a pas dit quels codes sont encore valables : {$why}",
  "link/scan-or-open": "Scannez-le, ou ouvrez {$host} et choisissez « Rejoindre une sortie ».",
  "link/code-field": "Code (neuf lettres et chiffres)",
  "link/join-example": "par exemple Sol, ou IV",
  "link/join": "Rejoindre la sortie",
  "link/join-how":
    "Le responsable de la sortie trouve un code sous Plus, Liaison. La sortie est alors conservée aussi sur cette tablette, et continue ici quand la liaison est perdue.",
  "link/state-alone": "seul",
  "link/state-linking": "liaison en cours : le hub est recherché",
  "link/state-linked": "relié",
  "link/state-ended": "terminé",
  "link/title": "Liaison",
  "link/hub": "Hub",
  "link/role-here": "Cette tablette",
  "link/key-here": "Sa clé",
  "link/key-tied":
    "conservée sur cette tablette, où personne ne peut la copier : aucun autre appareil ne peut prendre sa place dans la sortie",
  "link/key-copyable":
    "conservée sur cette tablette comme un nombre, car son navigateur ne conserve pas de clés : qui accède à ce que la tablette conserve pourrait la copier et prendre sa place dans la sortie",
  "link/key-insecure":
    "aucune, car cette page n’a pas été ouverte par TLS : si cette tablette quitte la sortie, il faut le propriétaire du hub pour y revenir",
  "link/key-unsupported":
    "aucune, car ce navigateur ne peut pas en créer : si cette tablette quitte la sortie, il faut le propriétaire du hub pour y revenir",
  "link/key-not-kept":
    "aucune, car cette tablette n’a pas pu en conserver : si elle quitte la sortie, il faut le propriétaire du hub pour y revenir",
  "link/entries": "Entrées",
  "link/last-word": "Dernier contact",
  "link/clock-here": "Horloge d’ici",
  "link/beyond": "De l’autre côté",
  "link/beyond-hub": "{$what}.",
  "link/followers": "Participants",
  "link/leave-title": "Quitter",
  "link/leave-how": "Ce qui est conservé ici y reste, et plus rien n’est envoyé ni récupéré.",
  "link/leave-unsent":
    ".input {$count :integer} .match $count one {{Ce qui est conservé ici y reste, et plus rien n’est envoyé ni récupéré. {$count} entrée n’a pas encore été envoyée.}} * {{Ce qui est conservé ici y reste, et plus rien n’est envoyé ni récupéré. {$count} entrées n’ont pas encore été envoyées.}}",
  "link/leave": "Quitter le hub",
  "link/clock-agrees":
    "conforme à celle du hub (± {$error :number minimumFractionDigits=2 maximumFractionDigits=2} s)",
  "link/clock-ahead":
    "{$size :message} d’avance sur celle du hub (± {$error :number minimumFractionDigits=2 maximumFractionDigits=2} s)",
  "link/clock-behind":
    "{$size :message} de retard sur celle du hub (± {$error :number minimumFractionDigits=2 maximumFractionDigits=2} s)",
  "link/seconds": "{$size :number minimumFractionDigits=1 maximumFractionDigits=1} s",
  "link/minutes": "{$size :integer} min",
  "link/hours": "{$size :number minimumFractionDigits=1 maximumFractionDigits=1} h",
  "link/all-sent": "tout est envoyé",
  "link/fetched-of": "{$come :integer} entrées récupérées sur {$of :integer}",
  "link/not-sent":
    ".input {$count :integer} .match $count one {{{$count} non envoyée}} * {{{$count} non envoyées}}",
  "link/only-here":
    ".input {$count :integer} .match $count one {{{$count} entrée d’un autre appareil n’est que sur cette tablette. Pour l’apporter au hub, quittez-le et partagez de nouveau la sortie avec le code du propriétaire.}} * {{{$count} entrées d’autres appareils ne sont que sur cette tablette. Pour les apporter au hub, quittez-le et partagez de nouveau la sortie avec le code du propriétaire.}}",
  "link/never-heard": "jamais entendu",
  "link/heard-seconds-ago": "entendu il y a {$seconds :integer} s",
  "link/heard-ago": "entendu il y a {$ago :length}",
  "link/in-memory": "En mémoire seulement",
  "link/export-before-closing": "exporter avant de fermer",
  "link/bar-alone": "Cet appareil seul",
  "link/kept-here": "journal conservé ici",
  "link/bar-linking": "Liaison… · {$heard}",
  "link/bar-linked": "Relié",
  "link/bar-linked-heard": "Relié · {$heard}",
  "link/bar-ended": "Liaison terminée",
  "link/kept-here-only": "conservé ici seulement",
  "link/at-utc": "{$at :utc form=time-second} UTC",
  "link/another-hub": "un autre hub",
  "link/is-reading": "est en lecture",
  "link/seen-nothing": "n’a encore rien vu",
  "link/seen-all": "a tout vu",
  "link/seen-up-to": "a tout vu jusqu’à {$moment}",
  "link/away-seen-up-to": "absent · a tout vu jusqu’à {$moment}",
  "link/hub-takes-nothing": "{$hub} ne prend rien : {$why}",
  "link/hub-refused": "{$hub} ne prend rien : accès refusé",
  "link/hub-got-nothing": "{$hub} n’a encore rien reçu",
  "link/hub-got-all": "{$hub} a tout reçu",
  "link/hub-got-up-to": "{$hub} a tout reçu jusqu’à {$moment}",
  "link/waiting-to-be-sent": "{$count :integer} en attente d’envoi",
  "link/another-device": "Un autre appareil",
  "link/overruled-done":
    "Votre marque pour l’étape {$number} « {$step} » n’a pas compté : {$who} l’avait omise avant. Ouvrez l’étape pour changer cela.",
  "link/overruled-skip":
    "Votre omission de l’étape {$number} « {$step} » n’a pas compté : {$who} l’avait marquée faite avant. Ouvrez l’étape pour changer cela.",
  "link/overruled-asked-again":
    "Votre marque pour l’étape {$number} « {$step} » n’a pas compté : sa décision avait été rouverte. Si elle a été faite, ouvrez l’étape et marquez-la faite hors ordre, avec la raison.",
  "link/overruled-settled":
    "Étape {$number}, {$step} : ce que vous avez décidé n’a pas compté, car {$who} avait dit comme responsable quelle issue est retenue. Demandez au responsable.",
  "link/overruled-dropped":
    "Votre marque pour l’étape {$number} « {$step} » n’a pas compté : {$who} avait retiré l’étape du plan.",
  "link/share-how":
    "Cette sortie est sur cet appareil seul. Apportée au hub à {#b}{$host}{/b}, elle peut être suivie et marquée depuis d’autres tablettes ; tout ce qui est fait ici reste d’abord conservé ici.",
  "link/share-how-anywhere":
    "Cette sortie est sur cet appareil seul. Apportée à un hub, elle peut être suivie et marquée depuis d’autres tablettes ; tout ce qui est fait ici reste d’abord conservé ici.",
  "link/hub-address": "Adresse du hub",
  "link/hub-address-example": "par exemple https://vehicle.local:4173",
  "link/hub-address-how":
    "Telle que la montre la console du hub, commençant par https://, ou le lien entier d’une invitation. Cette tablette doit faire confiance au certificat du hub.",
  "link/share-example": "par exemple Sol",
  "link/owner-code": "Code du propriétaire du hub",
  "link/owner-code-where": "Le hub le montre sur sa console à son démarrage.",
  "link/share": "Partager cette sortie",
  "link/no-walk-yet":
    "C’est le code du hub lui-même, et le hub n’a pas encore de sortie. Partagez-en une depuis la tablette qui l’a.",
  "link/which-walk": "C’est le code du hub lui-même : de quelle sortie serez-vous responsable ?",
  "link/title-not-known": "Pas encore connu",
  "link/walk-entries":
    ".input {$count :integer} .match $count one {{{$walk}, {$count} entrée}} * {{{$walk}, {$count} entrées}}",
};
