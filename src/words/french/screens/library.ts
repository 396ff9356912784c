import type { libraryWords as english } from "../../english/screens/library.ts";
import type { Translated } from "../../translated.ts";

/** The procedures that a hub keeps, and the help of that page. */
export const libraryWords: Translated<typeof english> = {
  "library/title": "Bibliothèque du hub",
  "library/what": "Procédures sur lesquelles plusieurs planificateurs travaillent",
  "library/alone":
    "Cette bibliothèque est sur cet appareil seul. Reliée à un hub, elle reçoit ce que d’autres conservent, et ce qui est conservé ici y va.",
  "library/join": "Relier la bibliothèque",
  "library/join-how":
    "Le code du propriétaire du hub ouvre sa bibliothèque, de même qu’un code créé par un responsable de celle-ci. Elle est alors conservée aussi sur cet appareil, et continue ici quand la liaison est perdue.",
  "library/linked": "{$hub} : {$state}, {$role}",
  "library/unsent":
    ".input {$count :integer} .match $count one {{{$count} révision conservée ici n’a pas encore été envoyée.}} * {{{$count} révisions conservées ici n’ont pas encore été envoyées.}}",
  "library/link": "Liaison et autres personnes",
  "library/reading": "La bibliothèque est en cours de lecture.",
  "library/not-read": "La bibliothèque n’a pas pu être lue : {$why}",
  "library/empty": "Il n’y a pas encore de procédure dans cette bibliothèque.",
  "library/unreadable":
    ".input {$count :integer} .match $count one {{{$count} entrée ne contient aucune procédure qui puisse être nommée, et est laissée telle quelle.}} * {{{$count} entrées ne contiennent aucune procédure qui puisse être nommée, et sont laissées telles quelles.}}",
  "library/apart":
    "Deux révisions, {$one :message} et {$other :message}, sont issues de la même : {$base :message}. Aucune n’a ce que l’autre a.",
  "library/apart-no-base":
    "Deux révisions, {$one :message} et {$other :message}, ne sont issues ni l’une de l’autre, ni d’une même révision ici. Aucune n’a ce que l’autre a.",
  "library/more-heads":
    ".input {$count :integer} .match $count one {{{$count} autre révision est à côté d’elles.}} * {{{$count} autres révisions sont à côté d’elles.}}",
  "library/bring-together": "Les réunir",
  "library/bring-how":
    "Les deux sont prises sur cet appareil et placées côte à côte, conflit par conflit. Ce que vous en enregistrez est sur votre étagère : conservez-le alors ici, comme issu des deux.",
  "library/name": "révision {$revision} par {$by}",
  "library/name-bare": "la révision par {$by}",
  "library/kept": "Conservée le {$at :utc form=second} UTC",
  "library/latest": "Rien n’en est encore issu",
  "library/on-shelf": "Sur l’étagère de cet appareil",
  "library/take": "Prendre sur cet appareil",
  "library/take-which": "Prendre sur cet appareil : {$name :message}",
  "library/refused":
    "Ce n’est pas une procédure lisible par ce programme : ouvrez-la dans la bibliothèque d’un programme plus récent.",
  "library/keep-title": "Conserver une révision dans la bibliothèque",
  "library/keep-which": "Laquelle, sur l’étagère de cet appareil",
  "library/keep-choice": "{$title}, révision {$revision}",
  "library/keep-choice-bare": "{$title}",
  "library/keep-bases": "De quoi elle est issue",
  "library/keep-bases-how":
    "Cochez ce qu’elle contient. Ce qui n’est pas coché et dont rien n’est issu reste à côté, jusqu’à ce que quelqu’un réunisse les deux.",
  "library/keep-new": "Il n’y a encore rien de cette procédure dans la bibliothèque.",
  "library/keep-from-none": "D’aucune de celles-ci",
  "library/keep-who": "Qui la conserve",
  "library/keep-why": "Pourquoi",
  "library/keep": "La conserver dans la bibliothèque",
  "library/keep-known": "Ce texte est déjà dans la bibliothèque.",
  "library/keep-say": "Dites de quoi elle est issue.",
  "library/keep-stale":
    "Autre chose en est déjà issu : la vôtre sera à côté, et quelqu’un devra réunir les deux.",
  "library/keep-may-not":
    "Seuls les responsables de cette bibliothèque y conservent des révisions ; vous pouvez prendre ce qui y est.",
  "library/keep-nothing":
    "Il n’y a aucune procédure à vous sur l’étagère de cet appareil. Enregistrez-en une d’abord, ou importez-en une.",
  "library/keep-done": "Dans la bibliothèque : {$name :message}.",
  "guide/library": "Aide : la bibliothèque du hub",
  "guide/library-take":
    "Une révision prise est sur l’étagère de cet appareil, avec qui l’a conservée et pourquoi. Ce qui est dans la bibliothèque n’en est pas changé.",
  "guide/library-keep":
    "Conserver une révision place son fichier tel quel dans la bibliothèque. Dites de quoi elle est issue. Rien n’y est jamais écrasé ni retiré.",
  "guide/library-apart":
    "Quand deux planificateurs sont partis d’une même révision, les deux y sont, et c’est dit. Les réunir ouvre la comparaison avec la révision dont toutes deux sont issues.",
  "guide/library-figures":
    "Une révision est désignée par son texte : un texte est une révision, quelle que soit la personne qui la conserve de nouveau.",
  "guide/library-offline":
    "La bibliothèque fonctionne sans liaison. Ce qui est conservé entre-temps est envoyé quand la liaison revient, et ce que d’autres ont conservé arrive.",
  "guide/library-roles":
    "Avec le code du propriétaire, vous êtes responsable et pouvez créer des codes pour d’autres. Qui a été admis comme marqueur ou observateur peut prendre des révisions et n’en conserve pas.",
  "library-link/lead-may": "garde des révisions dans la bibliothèque et y admet d’autres personnes",
  "library-link/reader-may": "prend des révisions sur son appareil et n’en garde aucune dans la bibliothèque",
  "library-link/take-follower-off": "Retirer {$follower} de la bibliothèque",
  "library-link/take-unnamed-off": "Retirer cet appareil de la bibliothèque",
  "library-link/take-all-off-question": "Retirer toutes les autres personnes de cette bibliothèque ?",
  "library-link/take-all-off-how":
    ".input {$others :integer} .match $others 0 {{À utiliser quand un code ou un appareil est en de mauvaises mains. Aucun autre appareil connu n’est dans la bibliothèque ; tous les codes prennent fin. Ce qui a été gardé reste.}} one {{À utiliser quand un code ou un appareil est en de mauvaises mains. {$others} autre appareil ou hub est retiré, et tous les codes prennent fin. Ce qui a été gardé reste.}} * {{À utiliser quand un code ou un appareil est en de mauvaises mains. {$others} autres appareils ou hubs sont retirés, et tous les codes prennent fin. Ce qui a été gardé reste.}}",
  "library-link/all-taken-off":
    ".input {$count :integer} .match $count 0 {{Personne d’autre n’était dans la bibliothèque. Tous ses codes ont pris fin.}} one {{{$count} appareil a été retiré de la bibliothèque. Tous ses codes ont pris fin.}} * {{{$count} appareils ont été retirés de la bibliothèque. Tous ses codes ont pris fin.}}",
  "library-link/key-tied":
    "gardée sur cette tablette, où personne ne peut la copier : aucun autre appareil ne peut prendre la place de cette tablette dans la bibliothèque",
  "library-link/key-copyable":
    "gardée sur cette tablette sous forme de nombre, car son navigateur ne garde aucune clé : quiconque accède à ce que garde la tablette pourrait la copier et prendre sa place dans la bibliothèque",
  "library-link/key-insecure":
    "aucune, car cette page n’a pas été ouverte par TLS : si cette tablette quitte la bibliothèque, il lui faut le propriétaire du hub pour revenir",
  "library-link/key-unsupported":
    "aucune, car ce navigateur ne peut pas en créer : si cette tablette quitte la bibliothèque, il lui faut le propriétaire du hub pour revenir",
  "library-link/key-not-kept":
    "aucune, car cette tablette n’a pas pu en garder : si elle quitte la bibliothèque, il lui faut le propriétaire du hub pour revenir",
  "library-link/only-here":
    ".input {$count :integer} .match $count one {{{$count} révision d’un autre appareil n’est que sur celui-ci. Pour l’apporter au hub, quittez-le et reliez de nouveau la bibliothèque avec le code du propriétaire.}} * {{{$count} révisions d’autres appareils ne sont que sur celui-ci. Pour les apporter au hub, quittez-le et reliez de nouveau la bibliothèque avec le code du propriétaire.}}",
  "library-link/scan-or-open":
    "Scannez-le, ou ouvrez {$host}, choisissez l’entrée pour rejoindre une sortie, puis celle de la bibliothèque du hub.",
};
