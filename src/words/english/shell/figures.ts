/** Bare figures with the words that go with them, and names in a row. */
export const figuresWords = {
  "figures/length": "{$time :length}",
  "figures/chance": "{$share :chance}",
  "figures/margin": "{$time :margin}",
  "figures/quantity": "{$quantity :quantity}",
  "figures/both": "{$written} ({$converted})",
  "figures/range": "{$least} to {$most}",
  "figures/list": "{$items :list}",
  "figures/between": ", ",
  "figures/between-clauses": "; ",
} as const;
