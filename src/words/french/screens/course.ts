import type { courseWords as english } from "../../english/screens/course.ts";
import type { Translated } from "../../translated.ts";

/** What waits are for, in a word. */
export const courseWords: Translated<typeof english> = {
  "course/cause-crew": "{$crew :list style=chained}",
  "course/cause-lag": "délai après {$step}",
  "course/cause-not-before": "pas avant {$at :pet}",
  "course/cause-window": "fenêtre {$window}",
  "course/cause-hold": "suspension",
};
