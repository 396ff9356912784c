/** What is said of readings of supplies. */
export const supplyWords = {
  "supply/below-zero": "{$value :number} is below zero, which no gauge can show",
  "supply/above-full": "{$value :number} is more than a tenth above full, which is {$full :number}",
} as const;
