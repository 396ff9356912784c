/** What changes come to: the finish, what is left, the findings that come and go. */
export const effectWords = {
  "effect/same-finish": "The finish stays as it is.",
  "effect/later": "The finish comes {$by :length} later.",
  "effect/earlier": "The finish comes {$by :advance} earlier.",
  "effect/none": "none",
  "effect/over": "{$time :length} over",
  "effect/spare": "{$time :margin}",
  "effect/findings-new": "New findings",
  "effect/findings-gone": "Findings that go",
  "effect/no-findings": "No finding comes or goes with it.",
} as const;
