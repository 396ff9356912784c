import type { courseWords as english } from "../../english/screens/course.ts";
import type { Translated } from "../../translated.ts";

/** What waits are for, in a word. */
export const courseWords: Translated<typeof english> = {
  "course/cause-crew": "{$crew :list style=chained}",
  "course/cause-lag": "délai après {$step}",
  "course/cause-not-before": "pas avant {$at :pet}",
  "course/cause-window": "fenêtre {$window}",
  "course/cause-hold": "suspension",
  "course/waits-unknown": "{$crew} attend {$time :length} sans raison connue",
  "course/waits-crew": "{$crew} attend {$others :list} pendant {$time :length}",
  "course/waits-own": "{$crew} attend {$time :length} après une étape de son propre couloir",
  "course/waits-lag": "{$crew} attend {$time :length} la fin du délai après l’étape {$step}",
  "course/waits-not-before":
    "{$crew} attend {$time :length} jusqu’à PET {$at :pet}, avant lequel l’étape ne commence pas",
  "course/waits-window": "{$crew} attend {$time :length} la fenêtre « {$window} »",
  "course/waits-hold": "{$crew} attend {$time :length} la fin de la suspension",
  "course/held-by-crew": "attend {$crew :list}",
  "course/held-by-window": "attend la fenêtre « {$window} » à {$pet :hour-minute}",
  "course/held-by-window-utc":
    "attend la fenêtre « {$window} » à {$pet :hour-minute} ({$at :utc form=time-minute} UTC)",
  "course/held-by-lag": "attend la fin du délai à {$pet :hour-minute}",
  "course/held-by-lag-utc": "attend la fin du délai à {$pet :hour-minute} ({$at :utc form=time-minute} UTC)",
  "course/held-by-not-before": "attend son heure, PET {$pet :pet}",
  "course/held-by-not-before-utc": "attend son heure, PET {$pet :pet} ({$at :utc form=time-minute} UTC)",
  "course/held-by-hold": "attend la levée de la suspension",
  "course/held-by-each": "{$each :clauses}",
};
