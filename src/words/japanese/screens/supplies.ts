import type { supplyWords as english } from "../../english/screens/supplies.ts";
import type { Translated } from "../../translated.ts";

/** What is said of readings of supplies. */
export const supplyWords: Translated<typeof english> = {
  "supply/below-zero": "{$value :quantity}はゼロ未満で、計器が示すことのない値です",
  "supply/above-full": "{$value :quantity}は満量の{$full :quantity}を1割以上超えています",
};
