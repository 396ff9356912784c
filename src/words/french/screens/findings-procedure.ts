import type { findingsOfProcedureWords as english } from "../../english/screens/findings-procedure.ts";
import type { Translated } from "../../translated.ts";

/** What the checker says of a procedure that could be read: order, decisions, supplies, ways, tethers, custody, wording. */
export const findingsOfProcedureWords: Translated<typeof english> = {
  "check/when": "{$finding :message} (Quand {$conditions :list style=chained}.)",
  "check/when-outcome": "« {$decision} » a pour issue « {$outcome} »",
  "check/when-get-ahead": "seule la tâche facultative « {$task} » est faite parmi les facultatives",
  "task/needs-get-ahead":
    "La tâche facultative « {$task} » ne peut pas être faite sans la tâche facultative « {$other} ». Faites-en une seule tâche, ou laissez « {$task} » apporter elle-même ce dont elle a besoin.",
  "task/needs-get-aheads":
    "La tâche facultative « {$task} » ne peut pas être faite seule, seulement avec toutes les autres. Faites-en une seule tâche, ou laissez « {$task} » apporter elle-même ce dont elle a besoin.",
  "check/when-get-aheads": "les tâches facultatives sont faites",
  "order/not-all-scenarios":
    "Il y a plus de combinaisons d’issues qu’on ne peut en vérifier une à une ; chaque écart aux issues attendues, seul ou par deux, a été vérifié ({$count :integer}).",
  "order/deadlock": "Blocage mutuel : ces étapes s’attendent sans fin : {$waits :clauses}.",
  "order/waits-in-lane":
    "« {$step} » ({$crew :list style=chained}) attend « {$other} », qui est avant elle dans le couloir",
  "order/waits-on-step":
    "« {$step} » ({$crew :list style=chained}) attend « {$other} », faite par {$otherCrew :list style=chained}",
  "order/more-races":
    "Plus de {$most :integer} paires d’étapes se gênent pour des objets ou des états ; les autres ne sont pas listées.",
  "order/mend-deadlock": "« {$step} » ne vient plus après « {$other} ».",
  "place/mend-at": "« {$step} » est faite à {$place}.",
  "place/mend-translation": "Avant « {$step} », {$crew} se déplace vers {$place}.",
  "custody/mend-receiver": "{$crew} prend part à « {$step} ».",
  "order/race-moves":
    "« {$mover} » ({$moverCrew :list style=chained}) et « {$other} » ({$otherCrew :list style=chained}) déplacent toutes deux {$item}, et rien ne dit laquelle vient en premier. Faites venir l’une après l’autre.",
  "state/race":
    "« {$one} » met {$state} à {$value}, « {$other} » le met à {$otherValue}, et rien ne dit laquelle vient en premier. Faites venir l’une après l’autre.",
  "state/needs": "« {$step} » exige que {$state} soit {$value} : {$why :message}",
  "state/between":
    "« {$other} » met {$state} à {$is}, et peut venir avant « {$step} ». Faites venir « {$other} » après « {$step} », ou placez entre elles une étape qui le remet à {$value}.",
  "state/not-set-first":
    "« {$other} » met {$state} à {$value}, mais rien ne dit qu’elle vient avant ; jusque-là, c’est {$is}. Faites venir « {$step} » après « {$other} », ou mettez-le dans une étape antérieure.",
  "state/set-too-late":
    "« {$other} » ne met {$state} à {$value} qu’après « {$step} » ; jusque-là, c’est {$is}. Placez « {$step} » derrière « {$other} », ou mettez-le dans une étape antérieure.",
  "state/never-set":
    "c’est {$is} dès le début, et aucune étape ne met {$state} à {$value}. Ajoutez avant « {$step} » une étape qui le fait, ou corrigez ce que « {$step} » exige.",
  "state/unset":
    "« {$other} » met {$state} à {$is}, et rien après elle ne le remet à {$value}. Faites venir « {$step} » avant « {$other} », ou ajoutez entre elles une étape qui le met.",
  "state/not-at-its-end":
    "À la fin, {$state} est {$is}, comme au début, et non {$end} comme il le faut. Ajoutez une étape qui le met.",
  "state/left-by":
    "À la fin, {$state} est {$is}, comme « {$step} » le laisse, et non {$end} comme il le faut. Ajoutez après celle-ci une étape qui le met.",
  "order/race-takes-out":
    "« {$mover} » ({$moverCrew :list style=chained}) déplace {$item} alors que « {$other} » ({$otherCrew :list style=chained}) en a besoin là où il est, pour atteindre {$handled}, et rien ne dit laquelle vient en premier. Faites venir l’une après l’autre.",
  "order/race-puts-in":
    "« {$mover} » ({$moverCrew :list style=chained}) déplace {$item} alors que « {$other} » ({$otherCrew :list style=chained}) y met {$handled}, et rien ne dit laquelle vient en premier. Faites venir l’une après l’autre.",
  "decision/one-outcome":
    "La décision « {$decision} » n’a qu’une issue, « {$outcome} » ; il n’y a donc rien à décider.",
  "decision/no-branch": "Aucune étape ne dépend de l’issue de la décision « {$decision} ».",
  "decision/never-performed":
    "« {$step} » n’est jamais exécutée : les issues qu’il lui faut ne se présentent jamais ensemble.",
  "task/closeout-get-ahead":
    "« {$task} » doit être faite sur le chemin du retour ; elle ne peut donc pas être une tâche facultative qu’on laisse quand le temps manque.",
  "record/no-supply":
    "Aucun consommable « {$supply} » n’existe pour {$crew :list of=any} ; une mesure de celui-ci n’est donc le relevé de personne. Nommez un consommable de qui fait l’étape.",
  "record/other-unit":
    "La mesure est en {$unit}, et le consommable « {$supply} » en {$other}. Donnez aux deux la même unité.",
  "supply/redline-above-full":
    "{$crew} : {$supply} est plein à {$full :number} et au seuil rouge à {$redline :number} : il serait épuisé avant le début de la sortie.",
  "supply/short":
    "Avec la consommation planifiée, {$crew} : {$supply} atteint son seuil rouge à PET {$at :clock}, {$before :length} avant que {$crew} ait fini « {$step} ».",
  "watch/never-on":
    "Le contrôle « {$watch} » prend fin avant de commencer : « {$until} » ne commence pas après que « {$from} » est faite.",
  "watch/none-due":
    "Le contrôle « {$watch} » n’arrive jamais à échéance : il revient toutes les {$every :length}, mais n’est actif que {$on :length}.",
  "time/beyond-turn-back":
    "« {$step} » retient {$crew} à {$place} jusqu’à PET {$until :clock}. Si l’on s’arrêtait alors, le retour prendrait {$back :length} avec tout le repli ; tous devraient donc faire demi-tour à PET {$latest :clock} au plus tard pour être rentrés à la limite de {$limit :clock} : {$over :length} de dépassement.",
  "time/no-return":
    "En cas d’arrêt à la fin de « {$step} », PET {$at :clock}, le repli ne tient plus dans aucune fenêtre ; aucune heure de demi-tour ne peut donc être donnée à partir de là.",
  "time/return-barred":
    "En cas d’arrêt à la fin de « {$step} », PET {$at :clock}, le chemin du retour est barré ; aucune heure de demi-tour ne peut donc être donnée à partir de là. {$why :message}",
  "time/return-breaks": "En cas d’arrêt à la fin de « {$step} », PET {$at :clock} : {$what :message}",
  "return/bar": "{$need :message} {$setter :message}",
  "return/step-needs": "« {$step} » exige que {$state} soit {$value}, et c’est {$is}.",
  "return/way-needs": "Pour aller à {$place}, {$crew} a besoin que {$state} soit {$value}, et c’est {$is}.",
  "return/refuge-needs":
    "Pour rejoindre un refuge, {$crew} a besoin que {$state} soit {$value}, et c’est {$is}.",
  "return/set-by-none": "Aucune étape ne le met ainsi.",
  "return/set-by-closeout": "« {$step} » devrait le mettre ainsi, et ne peut pas être faite avant.",
  "return/set-by-left-out":
    "« {$step} » devrait le mettre ainsi, et n’est pas une étape de repli ; elle est donc laissée sur le chemin du retour.",
  "return/set-by-done":
    "« {$step} » devrait le remettre ainsi : elle est faite, et aucune étape de repli ne le fait.",
  "return/done-late":
    "Sur le chemin du retour, « {$step} » est faite {$over :length} plus tard que son PET {$by :pet}.",
  "return/started-late":
    "Sur le chemin du retour, « {$step} » commence plus de {$within :margin} après « {$after} » : {$over :length} trop tard.",
  "place/no-refuge":
    "Aucun lieu n’est un refuge ; aucune heure de demi-tour ne peut donc être donnée. Marquez les lieux où l’on est en sécurité.",
  "place/no-way-home":
    "Aucun chemin avec une durée ne mène depuis {$place} à un refuge ; aucune heure de demi-tour ne peut donc être donnée pour les étapes qui s’y trouvent.",
  "place/no-start": "« {$step} » n’a pas de durée, et aucun de ceux qui la font n’a de lieu de départ.",
  "place/not-there":
    "{$crew} est à {$place}, mais « {$step} » est faite à {$at}, et aucun déplacement n’y mène.",
  "place/no-way-unknown":
    "On ne sait pas où est {$crew} avant « {$step} » ; la durée du déplacement ne peut donc pas être tirée des chemins.",
  "place/no-way":
    "Aucun chemin avec une durée ne mène depuis {$from} à {$to} ; « {$step} » a donc besoin d’une durée propre.",
  "text/confirms-itself":
    "Dans « {$step} », {$crew} confirme ce que {$crew} fait seul ; faites confirmer par quelqu’un d’autre.",
  "unit/not-valid":
    "« {$unit} » n’est pas un code UCUM ; personne ne peut donc dire ce que le chiffre signifie. Écrivez le code de l’unité, tel que kPa, N.m ou /min.",
  "unit/not-valid-meant":
    "« {$unit} » n’est pas un code UCUM ; personne ne peut donc dire ce que le chiffre signifie. Le code le plus proche est « {$meant} ».",
  "unit/mend": "« {$unit} » devient « {$meant} ».",
  "size/far-off":
    "Dans « {$step} », {$record} a une limite de {$value :number} {$unit}, plus de cent fois éloignée de toute autre limite en {$unit}. Vérifiez que le chiffre et l’unité vont ensemble.",
  "time/zero":
    "« {$step} » ne prend pas de temps, et pourtant quelque chose y est fait. Dites combien de temps elle dure, ou ôtez ce qui y est fait pour en faire un jalon.",
  "time/long":
    "« {$step} » dure {$likely :length} et {$high :length} au plus, plus de quatre heures pour une étape. Vérifiez la durée, ou faites-en plusieurs étapes.",
  "time/spread":
    "« {$step} » dure {$low :length} au moins et {$high :length} au plus, plus de cent fois autant. Vérifiez que les deux sont dans la bonne unité.",
  "time/seconds":
    "« {$step} » dure {$likely :length}, alors que la moitié des étapes durent plus de {$usual :length}. Vérifiez s’il s’agit de minutes.",
  "text/hand-over-not-confirmed":
    "Dans « {$step} », {$item} passe de l’un à l’autre, et personne ne confirme qu’il est tenu. Ajoutez une confirmation.",
  "text/mate-not-confirmed":
    "Dans « {$step} », quelque chose est raccordé, et personne ne le confirme. Ajoutez une confirmation.",
  "text/many-actions":
    "« {$step} » semble contenir plus d’une action ; une seule action par étape est plus facile à suivre et à marquer.",
  "text/no-verb": "« {$step} » ne commence pas par ce qu’il faut faire ; commencez par le verbe.",
  "text/receiver-not-named": "Dans « {$step} », {$item} passe à {$crew}, mais le texte ne nomme pas {$crew}.",
  "place/way-closed":
    "Dans « {$step} », {$crew} va de {$from} à {$to}, ce qui n’est un chemin que tant que {$state} est {$value} : {$why :message}",
  "tether/reach-not-known":
    "Aucun chemin ne mène depuis {$anchor}, où {$crew} a l’ancrage de sa longe, à {$place} ; on ne peut donc pas dire si la longe suffit dans « {$step} ».",
  "tether/out-of-reach":
    "Dans « {$step} », {$crew} est à {$place}, à {$way :metres} par le plus court chemin depuis {$anchor}, où {$crew} a l’ancrage de sa longe. La longe mesure {$length :metres} : {$short :metres round=up} de trop peu. Rapprochez d’abord l’ancrage.",
  "tether/anchor-not-there":
    "Dans « {$step} », {$crew} voit l’ancrage de sa longe déplacé à {$anchor}, mais {$crew} est à {$place}.",
  "tether/shared-route":
    "Les longes de {$one} ({$oneDuring :message}) et de {$other} ({$otherDuring :message}) peuvent se trouver toutes deux sur le chemin entre {$from} et {$to}. Tenez-les à l’écart l’une de l’autre.",
  "tether/in-step": "dans « {$step} »",
  "tether/from-step-to-step": "de « {$first} » à « {$last} »",
  "custody/would-be-inside-itself": "{$item} serait dans lui-même après « {$step} ».",
  "custody/not-held":
    "Dans « {$step} », {$crew :list style=chained} ne peut pas déplacer {$item}, qui se trouve ailleurs : {$where :message}.",
  "custody/hand-over-apart":
    "Dans « {$step} », {$item} ne peut pas passer de {$giver} ({$giverAt :message}) à {$receiver} ({$receiverAt :message}). Faites-les d’abord se rejoindre en un lieu, ou dites avec « at » où cela se fait.",
  "custody/hands-full":
    "Après « {$step} », à PET {$at :clock}, {$crew} a en main {$items :list style=chained}, ce qui demande {$needed :integer} mains. Faites d’abord ranger ou remettre quelque chose.",
  "custody/hands-full-at-start":
    "À PET {$at :clock}, {$crew} a en main {$items :list style=chained}, ce qui demande {$needed :integer} mains. Faites commencer quelque chose ailleurs.",
  "place/inside-works-outside":
    "« {$step} » est faite à {$place}, qui est à l’extérieur, alors qu’aucun de ceux qui la font n’y est : {$crew :list style=chained}. Nommez quelqu’un qui est à l’extérieur, ou ôtez le lieu.",
  "custody/receiver-absent": "Dans « {$step} », {$item} passe à {$crew}, qui ne prend pas part à l’étape.",
  "custody/place-not-there":
    "Dans « {$step} », {$item} est laissé à {$place}, mais aucun de ceux qui font l’étape n’y est.",
  "custody/bag-not-at-hand":
    "Dans « {$step} », {$item} va dans {$bag}, hors de portée de : {$crew :list style=chained}.",
  "custody/not-at-its-end": "À la fin, {$item} n’est pas à sa place ({$end :message}) : {$is :message}.",
  "custody/left-outside":
    "{$item} reste dehors à la fin ({$is :message}). Faites-le rentrer, ou donnez-lui une place finale.",
  "custody/where-nowhere": "nulle part",
  "custody/where-unknown": "en un lieu inconnu",
  "custody/where-crew": "avec {$crew :list style=chained}",
  "custody/where-inside": "à l’intérieur",
  "custody/where-ground": "au sol",
  "custody/where-place": "à {$place}",
  "custody/where-item": "dans {$item}",
  "words/no-member":
    "Dans les textes en {$language}, « {$key} » n’est l’identifiant de rien qui ait un texte.",
  "words/no-text":
    "Dans les textes en {$language}, « {$key} » a un « {$field} » pour lequel l’auteur n’a pas de texte.",
  "words/several":
    "Dans les textes en {$language}, « {$key} » peut désigner plusieurs choses qui ont un « {$field} ». Écrivez la liste devant l’identifiant, comme « places {$key} ».",
  "words/too-many":
    "Dans les textes en {$language}, « {$key} » a plus de textes sous « {$field} » que l’auteur n’en a écrits.",
  "words/older":
    "Le texte en {$language} de « {$field} » dans « {$key} » est plus ancien que le texte qu’il traduit : celui-ci était « {$was} » et est « {$is} ».",
  "words/missing":
    ".input {$count :integer} .match $count one {{{$count} texte n’est pas encore traduit en {$language} ; celui de l’auteur est affiché.}} many {{{$count} de textes ne sont pas encore traduits en {$language} ; ceux de l’auteur sont affichés.}} * {{{$count} textes ne sont pas encore traduits en {$language} ; ceux de l’auteur sont affichés.}}",
};
