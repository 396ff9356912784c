import type { linkStateWords as english } from "../../english/screens/link-state.ts";
import type { Translated } from "../../translated.ts";

/** How a link stands, what came of it, and why it fails: said by the link itself, of a tablet and of a hub alike. */
export const linkStateWords: Translated<typeof english> = {
  "link/no-answer": "Aucune réponse n’est venue à temps.",
  "link/nothing-heard": "Rien n’a été reçu depuis {$seconds :integer} s.",
  "link/answer-unfit": "La réponse ne correspond pas à ce qui a été envoyé.",
  "link/clock-was-set": "L’horloge de cet appareil a été réglée pendant sa comparaison.",
  "link/not-reached": "Le hub est injoignable.",
  "link/device-refused": "Le hub a refusé cet appareil.",
  "link/no-hub-here": "Il n’y a pas de hub ici.",
  "link/unknown-hub": "Ce qui répond ici n’est pas un hub connu de cette application.",
  "link/no-hub": "Ce qui répond ici n’est pas un hub.",
  "link/connection-lost": "La connexion au hub a été perdue.",
  "link/not-the-owners-code": "Ce n’est pas le code du propriétaire de ce hub : regardez sa console.",
  "link/name-of-another":
    "Le nom de cette tablette appartient à une autre clé dans cette sortie, comme si ses données avaient été copiées d’une autre tablette. Exportez ce qui n’est qu’ici, effacez les données de ce site dans le navigateur et rejoignez la sortie comme nouvelle tablette.",
  "link/name-taken":
    "Cette tablette est déjà dans la sortie, sans clé, et le hub ne peut pas savoir si c’est la même. Demandez au responsable de la retirer de la sortie, ou rejoignez-la avec le code du propriétaire.",
  "link/name-left":
    "Cette tablette a écrit dans cette sortie sans clé, puis l’a quittée ; le hub ne peut donc pas savoir si c’est la même. Rejoignez la sortie avec le code du propriétaire, ou effacez les données de ce site dans le navigateur et rejoignez-la comme nouvelle tablette.",
  "link/name-elsewhere":
    "Cette tablette est connue du hub de l’autre côté de la liaison : rejoignez la sortie auprès de ce hub.",
  "link/walk-not-linked": "Cette sortie n’est reliée à aucun hub.",
  "link/which-hub": "Dites d’abord où est le hub.",
  "link/not-an-address":
    "Ce n’est pas l’adresse d’un hub. Elle commence par https:// et finit par le port, comme le montre la console du hub.",
  "link/not-kept": "Cette tablette n’a pas pu le conserver : {$why :message}.",
  "link/trouble-here":
    "Cette tablette ne peut pas rester à jour avec le hub : {$trouble :message}. Elle continue d’essayer.",
  "link/reading-anew": "ce qui était conservé de la sortie a disparu, et elle est relue",
  "link/unreadable":
    ".input {$count :integer} .match $count one {{{$count} entrée du hub manque ici : cette version de l’application ne peut pas la lire. Mettez l’application à jour.}} * {{{$count} entrées du hub manquent ici : cette version de l’application ne peut pas les lire. Mettez l’application à jour.}}",
  "link/restamped":
    ".input {$count :integer} .match $count one {{{$count} entrée a été ordonnée d’après l’horloge du hub, car l’horloge de cette tablette avançait. Réglez-la.}} * {{{$count} entrées ont été ordonnées d’après l’horloge du hub, car l’horloge de cette tablette avançait. Réglez-la.}}",
  "link/restamped-by":
    ".input {$count :integer} .match $count one {{{$count} entrée a été ordonnée d’après l’horloge du hub, car l’horloge de cette tablette avance de {$by :length}. Réglez-la.}} * {{{$count} entrées ont été ordonnées d’après l’horloge du hub, car l’horloge de cette tablette avance de {$by :length}. Réglez-la.}}",
  "link/entered-anew":
    ".input {$count :integer} .match $count one {{{$count} entrée a été ressaisie sous un nouveau numéro, car le hub en avait une autre à sa place. Rien n’est perdu.}} * {{{$count} entrées ont été ressaisies sous de nouveaux numéros, car le hub en avait d’autres à leur place. Rien n’est perdu.}}",
  "link/set-aside":
    ".input {$count :integer} .match $count one {{{$count} entrée a été mise de côté et ne compte pas : {$why :message}.}} * {{{$count} entrées ont été mises de côté et ne comptent pas : {$why :message}.}}",
  "link/aside-refused": "le hub a refusé",
  "link/aside-not-an-entry": "le hub ne peut pas lire de telles entrées",
  "link/aside-other-walk": "le hub ne prend que des entrées de cette sortie",
  "link/aside-other-source": "le hub ne prend que ce qui a été fait sur cette tablette",
  "link/aside-role": "le rôle de cette tablette ne permet pas d’écrire de telles entrées",
  "link/aside-ahead": "le hub ne prend pas d’entrées aussi en avance dans le temps",
  "link/aside-limit": "trop de longueur pour le hub, ou plus de place",
  "link/aside-conflict": "le hub a autre chose à cette place",
};
