import type { courseWords as english } from "../../english/screens/course.ts";
import type { Translated } from "../../translated.ts";

/** What waits are for, in a word. */
export const courseWords: Translated<typeof english> = {
  "course/cause-crew": "{$crew :list style=chained}",
  "course/cause-lag": "{$step}後の間隔",
  "course/cause-not-before": "開始の下限 {$at :pet}",
  "course/cause-window": "時間帯 {$window}",
  "course/cause-hold": "ホールド",
  "course/waits-unknown": "{$crew}が{$time :length}待つ（理由は不明）",
  "course/waits-crew": "{$crew}が{$others :list}を{$time :length}待つ",
  "course/waits-own": "{$crew}が自分のステップの後に{$time :length}待つ",
  "course/waits-lag": "{$crew}がステップ {$step}後の間隔を{$time :length}待つ",
  "course/waits-not-before": "{$crew}が開始の下限 PET {$at :pet}まで{$time :length}待つ",
  "course/waits-window": "{$crew}が時間帯「{$window}」を{$time :length}待つ",
  "course/waits-hold": "{$crew}がホールドの解除を{$time :length}待つ",
  "course/held-by-crew": "{$crew :list}待ち",
  "course/held-by-window": "時間帯「{$window}」（{$pet :hour-minute}）待ち",
  "course/held-by-window-utc":
    "時間帯「{$window}」（{$pet :hour-minute}、{$at :utc form=time-minute} UTC）待ち",
  "course/held-by-lag": "{$pet :hour-minute}までの間隔の経過待ち",
  "course/held-by-lag-utc": "{$pet :hour-minute}（{$at :utc form=time-minute} UTC）までの間隔の経過待ち",
  "course/held-by-not-before": "指定時刻 PET {$pet :pet}待ち",
  "course/held-by-not-before-utc": "指定時刻 PET {$pet :pet}（{$at :utc form=time-minute} UTC）待ち",
  "course/held-by-hold": "ホールドの解除待ち",
  "course/held-by-each": "{$each :clauses}",
};
