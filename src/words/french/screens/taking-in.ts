import type { takingInWords as english } from "../../english/screens/taking-in.ts";
import type { Translated } from "../../translated.ts";

/** What the shelf says of files that it is given. Its first screen says none of it. */
export const takingInWords: Translated<typeof english> = {
  "shelf/nothing-given": "Il n’y a rien à importer : ni fichier ni texte.",
  "shelf/of-file": "{$file} : {$what}",
  "shelf/log-taken-in":
    ".input {$added :integer} .input {$known :integer} .input {$walks :integer} .match $added $walks one one {{{$added} entrée importée, {$known} déjà présentes, pour {$walks} sortie.}} one * {{{$added} entrée importée, {$known} déjà présentes, pour {$walks} sorties.}} * one {{{$added} entrées importées, {$known} déjà présentes, pour {$walks} sortie.}} * * {{{$added} entrées importées, {$known} déjà présentes, pour {$walks} sorties.}}",
  "shelf/conflicting":
    ".input {$count :integer} .match $count one {{{$count} entrée écartée : une autre a la même source et le même identifiant.}} * {{{$count} entrées écartées : d’autres ont la même source et le même identifiant.}}",
  "shelf/line-left-out": "La ligne {$line :integer} a été écartée : {$why}.",
  "shelf/more-lines-left-out":
    ".input {$count :integer} .match $count one {{{$count} autre ligne a été écartée.}} * {{{$count} autres lignes ont été écartées.}}",
  "shelf/extract-opened": "C’est un extrait d’un journal : il est affiché, et rien n’en est repris.",
  "shelf/unknown-file":
    "Ce n’est ni une procédure, ni le journal d’une sortie, ni une sauvegarde de cette application.",
  "shelf/backup-taken-in":
    ".input {$procedures :integer} .input {$entries :integer} .match $procedures $entries one one {{{$procedures} procédure et {$entries} entrée importées ; le reste était déjà ici.}} one * {{{$procedures} procédure et {$entries} entrées importées ; le reste était déjà ici.}} * one {{{$procedures} procédures et {$entries} entrée importées ; le reste était déjà ici.}} * * {{{$procedures} procédures et {$entries} entrées importées ; le reste était déjà ici.}}",
  "shelf/procedure-taken-in": "« {$title} » est sur l’étagère.",
  "shelf/procedure-known": "« {$title} » était déjà sur l’étagère.",
  "shelf/procedure-refused": "Ce fichier ne peut pas servir de procédure.",
  "shelf/finding-at-line": "Ligne {$line :integer} : {$finding :message}",
};
