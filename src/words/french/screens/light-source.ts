import type { lightSourceWords as english } from "../../english/screens/light-source.ts";
import type { Translated } from "../../translated.ts";

/** Where day and night come from, and why a file of an orbit or of spans is refused. */
export const lightSourceWords: Translated<typeof english> = {
  "light/of-site":
    "Lever et coucher du Soleil au site {$latitude :number}°, {$longitude :number}°, bord supérieur avec réfraction standard.",
  "light/of-orbit":
    "{$form} : {$object :message}, époque {$epoch :utc form=minute} UTC ; SGP4, ombre conique d’une sphère de {$radius :number} km.",
  "light/of-orbit-before":
    "{$form} : {$object :message}, époque {$epoch :utc form=minute} UTC, {$days :number minimumFractionDigits=1 maximumFractionDigits=1} jours avant le début ; SGP4, ombre conique d’une sphère de {$radius :number} km.",
  "light/of-orbit-after":
    "{$form} : {$object :message}, époque {$epoch :utc form=minute} UTC, {$days :number minimumFractionDigits=1 maximumFractionDigits=1} jours après le début ; SGP4, ombre conique d’une sphère de {$radius :number} km.",
  "light/contact":
    "{$windows :list} : les passages au-dessus de {$sites :list}, calculés à partir de l’orbite, sans réfraction ; les heures du fichier ne comptent pas.",
  "light/contact-site":
    "{$latitude :number}°, {$longitude :number}°, {$height :number} m, au-dessus d’un masque de {$mask :number}°",
  "light/contact-nowhere":
    "Aucune fenêtre de cette procédure n’est une fenêtre de contact ; les stations au sol ne changent donc rien.",
  "light/object": "objet {$number}",
  "light/old": "{$light :message} C’est plus de 14 jours : considérez les heures comme approximatives.",
  "orbit/problem": "{$field :message} : {$why :message}",
  "orbit/file": "fichier",
  "orbit/line": "ligne {$line :integer}",
  "orbit/empty": "le contenu est vide",
  "orbit/needs": "valeur « {$value} », mais SGP4 exige {$needed}",
  "orbit/not-sgp4": "type {$type}, qui n’est pas SGP4",
  "orbit/missing": "manquant",
  "orbit/not-a-number": "« {$text} » n’est pas un nombre",
  "orbit/not-an-epoch": "« {$text} » n’est pas une date et une heure en UTC",
  "orbit/not-whole": "ce n’est pas un nombre entier",
  "orbit/no-such-keyword": "la norme n’a pas ce mot-clé",
  "orbit/not-json": "ce n’est pas du JSON valide",
  "orbit/several-sets": "il y a {$count :integer} jeux ; il en faut un seul",
  "orbit/not-an-omm": "ce n’est pas un OMM",
  "orbit/neither": "ce n’est ni un nombre ni un texte",
  "orbit/no-assignment": "ce n’est pas une affectation",
  "orbit/stands-twice": "présent deux fois",
  "orbit/not-xml": "ce n’est pas du XML valide",
  "orbit/stands-twice-one-needed": "présent deux fois ; il faut un seul jeu",
  "orbit/line-length": "il y a {$count :integer} caractères, et non 69",
  "orbit/line-columns": "les colonnes ne sont pas celles d’un jeu d’éléments à deux lignes",
  "orbit/line-checksum":
    "la somme de contrôle est {$written}, mais la somme des chiffres donne {$sum :integer}",
  "orbit/two-lines": "un jeu d’éléments à deux lignes a deux lignes, ou trois avec un nom",
  "orbit/two-objects": "la ligne 1 concerne l’objet {$one}, la ligne 2 l’objet {$two}",
  "orbit/no-such-day": "le jour {$day :number} n’existe pas en {$year :integer}",
  "orbit/out-of-range": "{$value :number} n’est pas entre {$from :number} et {$to :number}",
  "spans/heading": "l’en-tête doit être « start,end »",
  "spans/cells": "il y a {$count :integer} cellules, et non 2",
  "spans/instants": "le début et la fin doivent être des instants avec un décalage ou Z",
  "spans/ends-first": "la fin précède le début",
};
