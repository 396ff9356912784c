import type { lightSourceWords as english } from "../../english/screens/light-source.ts";
import type { Translated } from "../../translated.ts";

/** Where day and night come from, and why a file of an orbit or of spans is refused. */
export const lightSourceWords: Translated<typeof english> = {
  "light/of-site":
    "Sonnenaufgang und Sonnenuntergang am Standort {$latitude :number}°, {$longitude :number}°, oberer Rand mit Standardrefraktion.",
  "light/of-orbit":
    "{$form} von {$object :message}, Epoche {$epoch :utc form=minute} UTC; SGP4, kegelförmiger Schatten einer Kugel von {$radius :number} km.",
  "light/of-orbit-before":
    "{$form} von {$object :message}, Epoche {$epoch :utc form=minute} UTC, {$days :number minimumFractionDigits=1 maximumFractionDigits=1} Tage vor dem Beginn; SGP4, kegelförmiger Schatten einer Kugel von {$radius :number} km.",
  "light/of-orbit-after":
    "{$form} von {$object :message}, Epoche {$epoch :utc form=minute} UTC, {$days :number minimumFractionDigits=1 maximumFractionDigits=1} Tage nach dem Beginn; SGP4, kegelförmiger Schatten einer Kugel von {$radius :number} km.",
  "light/contact":
    "{$windows :list}: die Überflüge über {$sites :list}, aus der Umlaufbahn berechnet, ohne Refraktion; Zeiten in der Datei zählen nicht.",
  "light/contact-site":
    "{$latitude :number}°, {$longitude :number}°, {$height :number} m, über einer Mindesthöhe von {$mask :number}°",
  "light/contact-nowhere":
    "Kein Zeitfenster dieser Prozedur ist eines mit Kontakt, daher ändern die Bodenstandorte nichts.",
  "light/object": "Objekt {$number}",
  "light/old": "{$light :message} Das sind mehr als 14 Tage: Die Zeiten sind nur grob.",
  "orbit/problem": "{$field :message}: {$why :message}",
  "orbit/file": "Datei",
  "orbit/line": "Zeile {$line :integer}",
  "orbit/empty": "leer",
  "orbit/needs": "dort steht „{$value}“, aber SGP4 braucht {$needed}",
  "orbit/not-sgp4": "es ist {$type}, und das ist nicht SGP4",
  "orbit/missing": "fehlt",
  "orbit/not-a-number": "„{$text}“ ist keine Zahl",
  "orbit/not-an-epoch": "„{$text}“ ist kein Datum mit Uhrzeit in UTC",
  "orbit/not-whole": "keine ganze Zahl",
  "orbit/no-such-keyword": "der Standard hat kein solches Schlüsselwort",
  "orbit/not-json": "kein gültiges JSON",
  "orbit/several-sets": "enthält {$count :integer} Sätze; nötig ist einer",
  "orbit/not-an-omm": "kein OMM",
  "orbit/neither": "weder eine Zahl noch ein Text",
  "orbit/no-assignment": "keine Zuweisung",
  "orbit/stands-twice": "steht zweimal da",
  "orbit/not-xml": "kein gültiges XML",
  "orbit/stands-twice-one-needed": "steht zweimal da; nötig ist ein Satz",
  "orbit/line-length": "hat {$count :integer} Zeichen, nicht 69",
  "orbit/line-columns": "die Spalten sind nicht die eines zweizeiligen Bahnelementsatzes",
  "orbit/line-checksum": "die Prüfsumme ist {$written}, aber die Ziffern ergeben {$sum :integer}",
  "orbit/two-lines": "ein zweizeiliger Bahnelementsatz hat zwei Zeilen, oder drei mit einem Namen",
  "orbit/two-objects": "Zeile 1 gehört zu Objekt {$one}, Zeile 2 zu Objekt {$two}",
  "orbit/no-such-day": "einen Tag {$day :number} gibt es in {$year :integer} nicht",
  "orbit/out-of-range": "{$value :number} liegt nicht zwischen {$from :number} und {$to :number}",
  "spans/heading": 'die Kopfzeile muss "start,end" sein',
  "spans/cells": "hat {$count :integer} Zellen, nicht 2",
  "spans/instants": "Beginn und Ende müssen Zeitpunkte mit Versatz oder Z sein",
  "spans/ends-first": "endet vor dem Beginn",
};
