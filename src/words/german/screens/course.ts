import type { courseWords as english } from "../../english/screens/course.ts";
import type { Translated } from "../../translated.ts";

/** What waits are for, in a word. */
export const courseWords: Translated<typeof english> = {
  "course/cause-crew": "{$crew :list style=chained}",
  "course/cause-lag": "Zeitabstand nach {$step}",
  "course/cause-not-before": "nicht vor {$at :pet}",
  "course/cause-window": "Zeitfenster {$window}",
  "course/cause-hold": "Halt",
};
