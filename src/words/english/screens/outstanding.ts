/** What was owed by a step or a watch and is not there. */
export const outstandingWords = {
  "owed/record-not-taken": "{$record} was not taken",
  "owed/record-out-of-range": "{$record} is outside its limits",
  "owed/confirmation-not-given": "{$crew} has not confirmed it",
  "owed/check-not-counted": "Not counted off: {$list :list}",
  "owed/reason-not-given": "Nobody said why it was done out of order",
  "owed/watch-not-kept": "Not kept since {$due :clock}: {$watch}",
} as const;
