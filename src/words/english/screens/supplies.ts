/** What is said of readings of supplies. */
export const supplyWords = {
  "supply/below-zero": "{$value :quantity} is below zero, which no gauge can show",
  "supply/above-full": "{$value :quantity} is more than a tenth above full, which is {$full :quantity}",
} as const;
