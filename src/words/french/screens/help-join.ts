import type { helpOfJoinWords as english } from "../../english/screens/help-join.ts";
import type { Translated } from "../../translated.ts";

/** The help of joining a walk. */
export const helpOfJoinWords: Translated<typeof english> = {
  "guide/join": "Aide : rejoindre une sortie",
  "guide/join-code":
    "Le responsable crée un code sous « Plus », « Liaison et participants ». Il a neuf lettres et chiffres, vaut 15 minutes, et admet autant de tablettes que le responsable l’a dit, une seule sauf indication contraire, avec un seul rôle.",
  "guide/join-roles":
    "Un responsable peut aussi clore la sortie et en admettre d’autres, un marqueur marque étapes, mesures et notes, un observateur lit seulement.",
  "guide/join-owner":
    "Le code du propriétaire du hub rend responsable de n’importe laquelle de ses sorties : choisissez-en une dans la liste.",
  "guide/join-kept":
    "Une sortie rejointe est conservée aussi sur cet appareil, et continue ici quand la liaison est perdue.",
  "guide/join-expired":
    "Un code expiré, mal tapé ou qui a admis autant de tablettes qu’il le peut n’admet personne : demandez-en un autre au responsable. Après plusieurs codes faux, le hub fait attendre quelques secondes tous ceux de ce réseau.",
  "guide/join-key":
    "Chaque tablette conserve une clé que personne ne peut copier, et montre au hub qu’elle l’a : aucune autre ne peut prendre sa place dans la sortie. Sans TLS, et dans de vieux navigateurs, il n’y en a pas, et l’écran « Liaison et participants » le dit.",
  "guide/join-unreachable":
    "Si le hub ne répond pas, vérifiez que cet appareil est sur son réseau et que l’adresse est bien celle du hub.",
};
