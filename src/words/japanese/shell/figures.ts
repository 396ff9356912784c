import type { figuresWords as english } from "../../english/shell/figures.ts";
import type { Translated } from "../../translated.ts";

/** Bare figures with the words that go with them, and names in a row. */
export const figuresWords: Translated<typeof english> = {
  "figures/length": "{$time :length}",
  "figures/chance": "{$share :chance}",
  "figures/margin": "{$time :margin}",
  "figures/quantity": "{$quantity :quantity}",
  "figures/both": "{$written}（{$converted}）",
  "figures/range": "{$least}〜{$most}",
  "figures/utc": "{$at :utc form=second}",
  "figures/utc-time": "{$at :utc form=time-second}",
  "figures/utc-minute": "{$at :utc form=time-minute}",
  "figures/list": "{$items :list}",
  "figures/between": "、",
  "figures/between-clauses": "；",
};
