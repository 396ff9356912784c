import type { hubAnswerWords as english } from "../../english/hub/answers.ts";
import type { Translated } from "../../translated.ts";

/** What a hub answers to whoever asks it, beside the code for programs. */
export const hubAnswerWords: Translated<typeof english> = {
  "answer/body-too-large": "Le corps est trop grand : envoyez-le en plus petites parties.",
  "answer/too-much-a-minute": "Cet appareil envoie trop à la fois : attendez un peu.",
  "answer/media-type":
    "Envoyez application/json, application/cloudevents-batch+json ou application/cloudevents+json.",
  "answer/content-length": "Le corps n’a pas la longueur que dit son Content-Length.",
  "answer/bad-address": "L’adresse n’est pas écrite comme une adresse.",
  "answer/own-mistake": "Le hub a rencontré une erreur interne ; sa console en dit plus.",
  "answer/headers-too-large": "Les en-têtes dépassent 16 kB.",
  "answer/too-slow": "La requête a mis trop de temps à arriver.",
  "answer/full": "Ce hub a autant de connexions qu’il peut en tenir : réessayez bientôt.",
  "answer/other-name":
    "Ce hub n’est pas servi sous ce nom : ouvrez-le par son adresse, ou démarrez-le avec --also-as et ce nom.",
  "answer/not-understood": "La requête ne peut pas être comprise.",
  "judge/no-entry": "Ce n’est pas une entrée : {$why :message}.",
  "judge/control-characters":
    "Ce n’est pas une entrée : sa source ou son identifiant contient des caractères de commande.",
  "judge/other-walk": "Son sujet n’est pas la sortie à laquelle elle a été envoyée.",
  "judge/seal-does-not-fit":
    "Son sceau ne correspond pas à la clé avec laquelle son appareil a rejoint la sortie.",
  "judge/not-by-role": "Elle ne peut pas être écrite : {$why :message}.",
  "judge/too-long":
    "Elle a {$length :integer} caractères, et une entrée de ce genre peut en avoir {$most :integer} ici : raccourcissez-la.",
  "judge/no-room": "Il n’y a plus de place pour elle : la sortie, ou la part de cet appareil, est pleine.",
  "judge/ahead":
    "Son hlc avance de {$seconds :integer} s sur l’horloge du hub : réglez l’horloge de l’appareil et horodatez-la de nouveau.",
  "judge/time-ahead":
    "Son heure avance de {$days :integer} jours sur l’horloge du hub : réglez l’horloge de l’appareil, ou celle du hub.",
  "judge/own-device":
    "Elle vient d’un appareil que ce hub a admis lui-même et qui apporte ses propres entrées ; celle-ci est mise de côté.",
  "judge/conflict":
    "Une autre entrée avec cette source et cet identifiant est déjà ici ; celle-ci est mise de côté.",
  "answer/no-token": "Rejoignez d’abord la sortie : il faut un jeton.",
  "answer/bad-token": "Ce jeton n’est pas (ou plus) valable : rejoignez de nouveau la sortie.",
  "answer/cross-site": "Une page d’un autre site ne peut pas faire cela.",
  "answer/other-walk": "Ce jeton est celui d’une autre sortie.",
  "answer/bad-walk": "Ce n’est pas écrit comme l’identifiant d’une sortie.",
  "answer/no-device": "Le code du propriétaire n’est d’aucun appareil : rejoignez la sortie.",
  "answer/lead-only": "Seul un responsable de la sortie peut faire cela.",
  "answer/bad-code": "Ce code n’est pas (ou plus) valable : demandez-en un autre.",
  "answer/code-used": "Ce code a admis autant d’appareils qu’il le peut : demandez-en un autre.",
  "answer/walk-needed": "Le code du propriétaire n’est d’aucune sortie : dites laquelle.",
  "answer/relay-by-owner":
    "Seul le propriétaire du hub admet un autre hub : créez le code pour celui-ci avec le code du propriétaire.",
  "answer/bad-proof":
    "La clé de cet appareil n’a pas été prouvée : demandez aussitôt un autre défi, et signez-le pour ce hub, cette sortie et cet appareil.",
  "answer/other-key":
    "Le nom de cet appareil appartient à une autre clé dans cette sortie, et seule cette clé peut l’avoir : rejoignez-la sous un nouveau nom.",
  "answer/key-needed":
    "Le nom de cet appareil appartient dans cette sortie à une clé, qui n’a pas été prouvée : rejoignez-la avec cette clé, ou sous un nouveau nom.",
  "answer/device-taken":
    "Un appareil de ce nom est dans la sortie sans clé, et garde son nom tant qu’il y est : rejoignez-la avec son jeton ou sous un nouveau nom, ou faites-le retirer par un responsable.",
  "answer/device-left":
    "Un appareil de ce nom a écrit dans cette sortie sans clé et en est sorti ; personne ne peut donc dire si c’est le même : rejoignez-la avec le code du propriétaire du hub, ou sous un nouveau nom.",
  "answer/device-elsewhere":
    "Ce nom appartient à un appareil d’un autre hub auquel celui-ci est relié : rejoignez la sortie là-bas, ou sous un nouveau nom.",
  "answer/too-many": "Trop de requêtes : attendez un peu.",
  "answer/too-many-tries":
    "Trop de codes faux sont venus de ce réseau : réessayez dans {$seconds :integer} s.",
  "answer/not-json": "Le corps n’est pas du JSON en UTF-8.",
  "answer/bad-part": "« {$where} » manque ou est incorrect dans le corps.",
  "answer/bad-body": "Le corps n’est pas un objet JSON tel que demandé.",
  "answer/store": "Le stockage de ce hub ne peut pas être écrit.",
  "answer/too-many-entries": "Envoyez au plus {$most :integer} entrées à la fois.",
  "answer/bad-cursor": "Un curseur s’écrit <epoch>:<offset>, ou avec son contrôle derrière.",
  "answer/send-one": "Envoyez un seul événement.",
  "answer/send-array": "Envoyez un tableau JSON d’événements.",
  "answer/not-found": "Il n’y a rien à cette adresse.",
  "answer/no-invitation": "Cette invitation à cette sortie n’existe pas (ou plus).",
  "answer/no-follower": "Aucun appareil de ce nom n’est dans cette sortie.",
};
