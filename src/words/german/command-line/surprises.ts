import type { surpriseSentences as english } from "../../english/command-line/surprises.ts";
import type { Translated } from "../../translated.ts";

/** Surprises of rehearsals on the command line. */
export const surpriseSentences: Translated<typeof english> = {
  "cli/surprises-laid":
    ".input {$count :integer} .match $count one {{{$count} von {$of :integer} Überraschungen wurde vorgesehen; die Auswertung des Außeneinsatzes nennt sie.}} * {{{$count} von {$of :integer} Überraschungen wurden vorgesehen; die Auswertung des Außeneinsatzes nennt sie.}}",
  "cli/surprises": "Überraschungen",
  "cli/surprise-came": "{$at :clock} {$title}: {$effect}",
  "cli/surprise-never": "kam nie: {$title}: {$effect}",
  "cli/surprise-expected": "Erwartet von {$crew :list} innerhalb von {$time :length}: {$notice} {$act}",
  "cli/surprise-unnoticed": "Kein Eintrag zeigt, dass sie bemerkt wurde.",
  "cli/surprise-sign": "{$at :clock} {$who}: {$what}",
  "cli/surprise-sign-said": "{$at :clock} {$who}: {$what}; {$said}",
  "cli/surprise-cost":
    ".input {$way :string} .match $way earlier {{Danach lag das Ende nach der Prognose {$time :length form=second} früher.}} * {{Danach lag das Ende nach der Prognose {$time :length form=second} später.}}",
  "cli/surprise-margin": "Die Reserve ging von {$before :margin} auf {$after :margin}.",
  "cli/surprise-supply": "{$supply} von {$crew} am Ende ging von {$before :quantity} auf {$after :quantity}.",
  "cli/surprises-alone":
    "{$file} enthält Überraschungen: Nennen Sie daneben auch die Datei der Prozedur „{$procedure}“.",
};
