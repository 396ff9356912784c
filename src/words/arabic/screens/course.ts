import type { courseWords as english } from "../../english/screens/course.ts";
import type { Translated } from "../../translated.ts";

/** What waits are for, in a word. */
export const courseWords: Translated<typeof english> = {
  "course/cause-crew": "{$crew :list style=chained}",
  "course/cause-lag": "الفاصل الزمني بعد {$step}",
  "course/cause-not-before": "ليس قبل {$at :pet}",
  "course/cause-window": "النافذة {$window}",
  "course/cause-hold": "إيقاف مؤقت",
  "course/waits-unknown": "انتظار {$crew} {$time :length} بلا سبب معروف",
  "course/waits-crew": "انتظار {$crew} {$time :length} من أجل {$others :list}",
  "course/waits-own": "انتظار {$crew} {$time :length} بعد خطوة خاصة به",
  "course/waits-lag": "انتظار {$crew} {$time :length} انقضاءَ الفاصل الزمني بعد الخطوة {$step}",
  "course/waits-not-before": "انتظار {$crew} {$time :length} حتى PET {$at :pet}، إذ لا تبدأ الخطوة قبله",
  "course/waits-window": "انتظار {$crew} {$time :length} للنافذة «{$window}»",
  "course/waits-hold": "انتظار {$crew} {$time :length} لرفع الإيقاف المؤقت",
  "course/held-by-crew": "في انتظار {$crew :list}",
  "course/held-by-window": "في انتظار النافذة «{$window}» عند {$pet :hour-minute}",
  "course/held-by-window-utc":
    "في انتظار النافذة «{$window}» عند {$pet :hour-minute} ({$at :utc form=time-minute} UTC)",
  "course/held-by-lag": "في انتظار انقضاء الفاصل الزمني عند {$pet :hour-minute}",
  "course/held-by-lag-utc":
    "في انتظار انقضاء الفاصل الزمني عند {$pet :hour-minute} ({$at :utc form=time-minute} UTC)",
  "course/held-by-not-before": "في انتظار موعد البدء، PET {$pet :pet}",
  "course/held-by-not-before-utc": "في انتظار موعد البدء، PET {$pet :pet} ({$at :utc form=time-minute} UTC)",
  "course/held-by-hold": "في انتظار رفع الإيقاف المؤقت",
  "course/held-by-each": "{$each :clauses}",
};
