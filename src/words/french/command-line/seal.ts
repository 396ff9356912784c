import type { sealSentences as english } from "../../english/command-line/seal.ts";
import type { Translated } from "../../translated.ts";

/** What `verify` and `extract` print. */
export const sealSentences: Translated<typeof english> = {
  "cli/verify-not-read": "{$file}, ligne {$line :integer}, n’est pas lue : {$why}.",
  "cli/verify-no-key":
    "« {$key} » n’est pas la clé d’un hub : 43 lettres, telles que les montre son écran de démarrage.",
  "cli/verify-no-code": "« {$code} » n’est pas un code : douze lettres par groupes de trois.",
  "cli/verify-source": "Source",
  "cli/verify-by": "Admise comme",
  "cli/verify-admitted": "{$name}, {$role}",
  "cli/verify-verdict": "Verdict",
  "cli/verify-entries": "Entrées",
  "cli/verify-sealed": "Scellées",
  "cli/verify-behind": "Après",
  "cli/verify-finding": "{$source} : {$what}.",
  "cli/verify-finding-at": "{$source}, numéro {$number :integer} : {$what}.",
  "cli/verify-checkpoint":
    ".input {$entries :integer} .match $entries one {{Point de contrôle {$code} pour {$entries} entrée par {$by} ({$trust}) : {$state}.}} * {{Point de contrôle {$code} pour {$entries} entrées par {$by} ({$trust}) : {$state}.}}",
  "cli/verify-code":
    "Toutes les entrées d’ici ({$entries :integer}) : code {$code}, racine {$root}, ordre {$order}.",
  "cli/verify-spelled": "À lire à voix haute : {$spelled}.",
  "cli/verify-hub": "{$source} a la clé {$key}.",
  "cli/verify-extract-checkpoint":
    "Le point de contrôle par {$by} ({$trust}) : code {$code}, racine {$root}.",
  "cli/extract-nothing": "Aucune entrée de {$file} n’a été choisie : rien n’est écrit.",
  "cli/extract-choose":
    "Dites quoi prendre avec --step ou --kind : un extrait de tout est le journal lui-même.",
  "cli/extract-no-checkpoint":
    "{$file} n’a aucun point de contrôle d’un hub qui lui corresponde : rien ne permet de prouver un extrait.",
  "cli/extract-behind":
    ".input {$count :integer} .match $count one {{Aucun point de contrôle ne contient {$count} des entrées choisies : rien n’est écrit. Reprenez le journal quand le hub aura fait un autre point de contrôle.}} * {{Aucun point de contrôle ne contient {$count} des entrées choisies : rien n’est écrit. Reprenez le journal quand le hub aura fait un autre point de contrôle.}}",
  "cli/extract-made": "{$file} : entrées en entier {$chosen :integer}, laissées de côté {$left :integer}.",
  "cli/verify-same":
    ".input {$entries :integer} .match $entries one {{Le code que vous avez donné est le même : il vaut pour {$entries} entrée.}} * {{Le code que vous avez donné est le même : il vaut pour {$entries} entrées.}}",
  "cli/verify-differs":
    "Le code que vous avez donné n’est pas celui de ce journal : il diffère dans le groupe {$groups :list}. Mal entendu, ou d’autres entrées là-bas.",
};
