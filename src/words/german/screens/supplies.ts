import type { supplyWords as english } from "../../english/screens/supplies.ts";
import type { Translated } from "../../translated.ts";

/** What is said of readings of supplies. */
export const supplyWords: Translated<typeof english> = {
  "supply/below-zero": "{$value :quantity} liegt unter null; das kann keine Anzeige zeigen",
  "supply/above-full": "{$value :quantity} liegt mehr als ein Zehntel über voll; voll ist {$full :quantity}",
};
