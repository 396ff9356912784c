/** Bare figures with the words that go with them, and names in a row. */
export const figuresWords = {
  "figures/length": "{$time :length}",
  "figures/length-negative": "−{$time :length}",
  "figures/list": "{$items :list}",
  /** A sentence that has no key of its own yet. */
  "figures/as-said": "{$text}",
} as const;
