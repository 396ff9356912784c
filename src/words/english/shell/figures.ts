/** Bare figures with the words that go with them, and names in a row. */
export const figuresWords = {
  "figures/length": "{$time :length}",
  "figures/chance": "{$share :chance}",
  "figures/margin": "{$time :margin}",
  "figures/quantity": "{$quantity :quantity}",
  "figures/both": "{$written} ({$converted})",
  "figures/range": "{$least} to {$most}",
  "figures/utc": "{$at :utc form=second}",
  "figures/utc-time": "{$at :utc form=time-second}",
  "figures/utc-minute": "{$at :utc form=time-minute}",
  "figures/list": "{$items :list}",
  "figures/between": ", ",
  "figures/between-clauses": "; ",
} as const;
