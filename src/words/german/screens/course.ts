import type { courseWords as english } from "../../english/screens/course.ts";
import type { Translated } from "../../translated.ts";

/** What waits are for, in a word. */
export const courseWords: Translated<typeof english> = {
  "course/cause-crew": "{$crew :list style=chained}",
  "course/cause-lag": "Zeitabstand nach {$step}",
  "course/cause-not-before": "nicht vor {$at :pet}",
  "course/cause-window": "Zeitfenster {$window}",
  "course/cause-hold": "Halt",
  "course/waits-unknown": "{$crew} wartet {$time :length} aus keinem bekannten Grund",
  "course/waits-crew": "{$crew} wartet {$time :length} auf {$others :list}",
  "course/waits-own": "{$crew} wartet {$time :length} nach einem eigenen Schritt",
  "course/waits-lag": "{$crew} wartet {$time :length} auf das Ende des Zeitabstands nach Schritt {$step}",
  "course/waits-not-before":
    "{$crew} wartet {$time :length} bis PET {$at :pet}, vor der der Schritt nicht beginnt",
  "course/waits-window": "{$crew} wartet {$time :length} auf das Zeitfenster „{$window}“",
  "course/waits-hold": "{$crew} wartet {$time :length} auf das Ende des Halts",
  "course/held-by-crew": "wartet auf {$crew :list}",
  "course/held-by-window": "wartet auf das Zeitfenster „{$window}“ um {$pet :hour-minute}",
  "course/held-by-window-utc":
    "wartet auf das Zeitfenster „{$window}“ um {$pet :hour-minute} ({$at :utc form=time-minute} UTC)",
  "course/held-by-lag": "wartet auf das Ende des Zeitabstands um {$pet :hour-minute}",
  "course/held-by-lag-utc":
    "wartet auf das Ende des Zeitabstands um {$pet :hour-minute} ({$at :utc form=time-minute} UTC)",
  "course/held-by-not-before": "wartet auf die eigene Zeit, PET {$pet :pet}",
  "course/held-by-not-before-utc":
    "wartet auf die eigene Zeit, PET {$pet :pet} ({$at :utc form=time-minute} UTC)",
  "course/held-by-hold": "wartet auf das Ende des Halts",
  "course/held-by-each": "{$each :clauses}",
};
