import type { helpOfFollowWords as english } from "../../english/screens/help-follow.ts";
import type { Translated } from "../../translated.ts";

/** The help of the follow screen. */
export const helpOfFollowWords: Translated<typeof english> = {
  "guide/follow": "Aide : suivre une sortie",
  "guide/follow-marker":
    "Un disque avec une étiquette est un membre d’équipage, sur le brin, à l’étape qu’il a atteinte. Un petit anneau sur un brin marque l’étape qu’un membre d’équipage attend.",
  "guide/follow-slack":
    "Un brin qui pend est un membre d’équipage qui attend ; il descend jusqu’à l’étape attendue. La fiche dit qui il attend, et environ combien de temps.",
  "guide/follow-act-now": "▲ demande d’agir maintenant, et reste jusqu’à ce que ce soit passé.",
  "guide/follow-look-soon": "◆ demande un regard sous peu, et reste jusqu’à ce qu’il soit vu.",
  "guide/follow-know": "● est à savoir, et reste jusqu’à ce qu’il soit vu.",
  "guide/follow-owed":
    "○ marque ce qu’une étape doit encore : une valeur, une confirmation, une raison, un temps non écoulé. Il reste jusqu’à ce que cela vienne, et figure sous « À compléter ».",
  "guide/follow-times":
    "Le mot au-dessus d’une heure dit ce qu’elle est : faite (gras) a été saisie, attendue (italique) est la prévision, planifiée est le plan avant le lancement de l’horloge.",
  "guide/follow-tap":
    "Un appui sur « Fait » marque une étape, et c’est enregistré avant que l’écran le dise. « Annuler » remonte tout ce qui a été saisi sur cet appareil.",
  "guide/follow-step":
    "Touchez une ligne de la liste pour tout le reste de son étape : mesures, notes, omission, réouverture.",
  "guide/follow-branches":
    "Une étape qui décide dit sous ses issues où chacune mènerait d’ici, d’après les durées probables ; son volet le dit à tout moment. La personne qui décide choisit.",
  "guide/follow-away":
    "La liste suit la sortie. Si vous la faites défiler, elle reste où elle est, et « Maintenant » y ramène.",
  "guide/follow-pet":
    "PET est le temps écoulé depuis le lancement de l’horloge, d’après l’horloge de cet appareil, corrigée par celle du hub s’il y en a un.",
  "guide/follow-margin":
    "La marge est la limite de la procédure moins la fin selon la prévision : ce qui reste, d’après les durées probables, depuis là où chacun se trouve.",
  "guide/follow-fit":
    "« Retard ? », ou un appui sur « Écart au plan », dit ce qui tient encore : quelles tâches facultatives peuvent être faites avant la limite, avec quelle probabilité, et de combien le travail essentiel dépasse quand il ne tient pas. À côté, « Meilleure répartition du reste » cherche qui devrait faire quoi du reste, et dans quel ordre, pour finir plus tôt. Ni l’un ni l’autre ne change rien.",
  "guide/follow-amend":
    "Un responsable modifie le plan sous « Plus », à une étape, depuis « Retard ? » ou en engageant une procédure de secours. Ce que cela donnerait est montré d’abord ; ce qui est fait ou en cours reste. Les autres en sont avertis jusqu’à ce qu’ils touchent « Vu », et le retard se mesure alors par rapport au plan modifié.",
  "guide/follow-turn-back":
    "Le demi-tour est le PET le plus tardif auquel ceux qui sont dehors rentrent encore avant la limite ou un seuil rouge, avec le repli planifié. Ce qui le fixe est indiqué à côté ; « Chiffres » en dit plus.",
  "guide/follow-supplies":
    "Un seuil rouge est donné d’après les derniers relevés, ou d’après la consommation planifiée s’ils sont trop peu nombreux. Les relevés sont aussi anciens qu’il est indiqué.",
  "guide/follow-windows":
    "Le prochain changement de lumière ou de contact vient de l’orbite, du site ou de la liste avec lesquels la sortie a été ouverte. Rien ne le mesure.",
  "guide/follow-unsure":
    "Quand un chiffre manque, l’écran le dit au lieu de deviner : pas de prévision, heures inconnues. Tenez-vous-en alors au papier et aux règles de vol.",
  "guide/follow-wrong":
    "Une marque fausse : annulez-la, ou rouvrez l’étape avec une raison. Une valeur fausse : notez-la de nouveau. Un objet ailleurs : saisissez où sous « Objets ».",
  "guide/follow-refused":
    "Ce qui n’a pas pu être conservé est dit dans un cadre qui reste. Notez-le sur papier, exportez le journal et touchez de nouveau.",
  "guide/follow-voice-code":
    "Le code oral, sous Liaison et participants, dit si deux sites ont la même chose : lisez-le à voix haute, et tapez celui que lit l’autre site.",
  "guide/follow-link-lost":
    "Sans la liaison, la sortie continue ici, et ce qui est saisi est envoyé quand la liaison revient. Si deux personnes marquent la même étape, cela ne nuit pas : la première compte.",
  "guide/follow-gone":
    "Si l’écran tombe en panne, continuez avec la procédure imprimée, et rouvrez la sortie depuis l’étagère : chaque marque confirmée y est. Ce qui a été fait entre-temps se saisit avec ses heures : « Plus », « Saisir depuis le papier ».",
  "guide/follow-practice":
    "À côté d’une répétition de la sortie d’entraînement, un guide dit quoi faire ensuite. Il peut être rangé et rappelé, et ne saisit rien lui-même. L’horloge de cette sortie tourne tant que son écran est regardé.",
};
