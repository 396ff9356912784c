/** What waits are for, in a word. */
export const courseWords = {
  "course/cause-crew": "{$crew :list style=chained}",
  "course/cause-lag": "lag after {$step}",
  "course/cause-not-before": "not before {$at :pet}",
  "course/cause-window": "window {$window}",
  "course/cause-hold": "hold",
  "course/waits-unknown": "{$crew} waits {$time :length} for no known reason",
  "course/waits-crew": "{$crew} waits {$time :length} for {$others :list}",
  "course/waits-own": "{$crew} waits {$time :length} after a step of their own",
  "course/waits-lag": "{$crew} waits {$time :length} for the time after step {$step}",
  "course/waits-not-before":
    "{$crew} waits {$time :length} until PET {$at :pet}, before which the step does not start",
  "course/waits-window": "{$crew} waits {$time :length} for {$window}",
  "course/waits-hold": "{$crew} waits {$time :length} for the hold",
  "course/held-by-crew": "waits for {$crew :list}",
  "course/held-by-window": "waits for {$window} at {$pet :hour-minute}",
  "course/held-by-window-utc": "waits for {$window} at {$pet :hour-minute} ({$at :utc form=time-minute} UTC)",
  "course/held-by-lag": "waits for time to pass until {$pet :hour-minute}",
  "course/held-by-lag-utc":
    "waits for time to pass until {$pet :hour-minute} ({$at :utc form=time-minute} UTC)",
  "course/held-by-not-before": "waits for its time, PET {$pet :pet}",
  "course/held-by-not-before-utc": "waits for its time, PET {$pet :pet} ({$at :utc form=time-minute} UTC)",
  "course/held-by-hold": "waits for the hold to be lifted",
  "course/held-by-each": "{$each :clauses}",
} as const;
