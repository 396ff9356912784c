import type { courseWords as english } from "../../english/screens/course.ts";
import type { Translated } from "../../translated.ts";

/** What waits are for, in a word. */
export const courseWords: Translated<typeof english> = {
  "course/cause-crew": "{$crew :list style=chained}",
  "course/cause-lag": "{$step}後の間隔",
  "course/cause-not-before": "開始の下限 {$at :pet}",
  "course/cause-window": "時間帯 {$window}",
  "course/cause-hold": "ホールド",
};
