/** What waits are for, in a word. */
export const courseWords = {
  "course/cause-crew": "{$crew :list style=chained}",
  "course/cause-lag": "lag after {$step}",
  "course/cause-not-before": "not before {$at :pet}",
  "course/cause-window": "window {$window}",
  "course/cause-hold": "hold",
} as const;
