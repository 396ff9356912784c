/** Where day and night come from, and why a file of an orbit or of spans is refused. */
export const lightSourceWords = {
  "light/of-site":
    "Sunrise and sunset of the site at {$latitude :number}°, {$longitude :number}°, upper limb with standard refraction.",
  "light/of-orbit":
    "{$form} of {$object :message}, epoch {$epoch :utc form=minute} UTC; SGP4, conical shadow of a sphere of {$radius :number} km.",
  "light/of-orbit-before":
    "{$form} of {$object :message}, epoch {$epoch :utc form=minute} UTC, {$days :number minimumFractionDigits=1 maximumFractionDigits=1} days before the start; SGP4, conical shadow of a sphere of {$radius :number} km.",
  "light/of-orbit-after":
    "{$form} of {$object :message}, epoch {$epoch :utc form=minute} UTC, {$days :number minimumFractionDigits=1 maximumFractionDigits=1} days after the start; SGP4, conical shadow of a sphere of {$radius :number} km.",
  "light/contact":
    "{$windows :list}: the passes over {$sites :list}, worked out from the orbit, without refraction; times in the file do not count.",
  "light/contact-site":
    "{$latitude :number}°, {$longitude :number}°, {$height :number} m, above a mask of {$mask :number}°",
  "light/contact-nowhere":
    "No window of this procedure is one of contact, so the ground sites change nothing.",
  "light/object": "object {$number}",
  "light/old": "{$light :message} That is more than 14 days: take the times as rough.",
  "orbit/problem": "{$field :message}: {$why :message}",
  "orbit/file": "file",
  "orbit/line": "line {$line :integer}",
  "orbit/empty": "it is empty",
  "orbit/needs": 'it is "{$value}", but SGP4 needs {$needed}',
  "orbit/not-sgp4": "it is {$type}, which is not SGP4",
  "orbit/missing": "it is missing",
  "orbit/not-a-number": '"{$text}" is not a number',
  "orbit/not-an-epoch": '"{$text}" is not a date and time in UTC',
  "orbit/not-whole": "it is not a whole number",
  "orbit/no-such-keyword": "the standard has no such keyword",
  "orbit/not-json": "it is not valid JSON",
  "orbit/several-sets": "it holds {$count :integer} sets; one is needed",
  "orbit/not-an-omm": "it is not an OMM",
  "orbit/neither": "it is neither a number nor a text",
  "orbit/no-assignment": "it is no assignment",
  "orbit/stands-twice": "it stands twice",
  "orbit/not-xml": "it is not valid XML",
  "orbit/stands-twice-one-needed": "it stands twice; one set is needed",
  "orbit/line-length": "it has {$count :integer} characters, not 69",
  "orbit/line-columns": "its columns are not those of a two-line element set",
  "orbit/line-checksum": "its checksum is {$written}, but its digits add up to {$sum :integer}",
  "orbit/two-lines": "a two-line element set has two lines, or three with a name",
  "orbit/two-objects": "line 1 is of object {$one}, line 2 of object {$two}",
  "orbit/no-such-day": "there is no day {$day :number} in {$year :integer}",
  "orbit/out-of-range": "{$value :number} is not between {$from :number} and {$to :number}",
  "spans/heading": 'the heading must be "start,end"',
  "spans/cells": "it has {$count :integer} cells, not 2",
  "spans/instants": "start and end must be instants with an offset or Z",
  "spans/ends-first": "it ends before it starts",
} as const;
