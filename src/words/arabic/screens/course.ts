import type { courseWords as english } from "../../english/screens/course.ts";
import type { Translated } from "../../translated.ts";

/** What waits are for, in a word. */
export const courseWords: Translated<typeof english> = {
  "course/cause-crew": "{$crew :list style=chained}",
  "course/cause-lag": "الفاصل الزمني بعد {$step}",
  "course/cause-not-before": "ليس قبل {$at :pet}",
  "course/cause-window": "النافذة {$window}",
  "course/cause-hold": "إيقاف مؤقت",
};
