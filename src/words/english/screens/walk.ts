/** What is said of the entries of a walk: why a step was skipped, why an entry had no effect. */
export const walkWords = {
  "walk/left-out": "Left out: {$needed :length} of work, and the margin is {$margin :length}",
  "walk/left-out-spent": "Left out: {$needed :length} of work, and the margin is spent",
} as const;
