import type { supplyWords as english } from "../../english/screens/supplies.ts";
import type { Translated } from "../../translated.ts";

/** What is said of readings of supplies. */
export const supplyWords: Translated<typeof english> = {
  "supply/below-zero": "{$value :quantity} est inférieur à zéro, ce qu’aucun indicateur ne peut montrer",
  "supply/above-full": "{$value :quantity} dépasse de plus d’un dixième le plein, qui est {$full :quantity}",
};
