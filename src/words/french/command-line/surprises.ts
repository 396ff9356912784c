import type { surpriseSentences as english } from "../../english/command-line/surprises.ts";
import type { Translated } from "../../translated.ts";

/** Surprises of rehearsals on the command line. */
export const surpriseSentences: Translated<typeof english> = {
  "cli/surprises-laid":
    ".input {$count :integer} .match $count one {{{$count} imprévu sur {$of :integer} a été programmé ; le bilan de la sortie dit lequel.}} * {{{$count} imprévus sur {$of :integer} ont été programmés ; le bilan de la sortie dit lesquels.}}",
  "cli/surprises": "Imprévus",
  "cli/surprise-came": "{$at :clock} {$title} : {$effect}",
  "cli/surprise-never": "jamais venu : {$title} : {$effect}",
  "cli/surprise-expected": "Attendu, {$crew :list}, en {$time :length} au plus : {$notice} {$act}",
  "cli/surprise-unnoticed": "Aucune entrée ne montre qu’il a été remarqué.",
  "cli/surprise-sign": "{$at :clock} {$who} : {$what}",
  "cli/surprise-sign-said": "{$at :clock} {$who} : {$what} ; {$said}",
  "cli/surprise-cost":
    ".input {$way :string} .match $way earlier {{Après lui, la fin selon la prévision était {$time :length form=second} plus tôt.}} * {{Après lui, la fin selon la prévision était {$time :length form=second} plus tard.}}",
  "cli/surprise-margin": "La marge est passée de {$before :margin} à {$after :margin}.",
  "cli/surprise-supply":
    "{$supply}, {$crew} : le reste à la fin est passé de {$before :quantity} à {$after :quantity}.",
  "cli/surprises-alone":
    "{$file} contient des imprévus : nommez aussi à côté le fichier de la procédure « {$procedure} ».",
};
