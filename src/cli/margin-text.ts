import type { Duration } from "../core/units/index.ts";
import { clockText } from "../core/units/index.ts";

/** A margin as a clock, with a sign below zero. What is left goes down and what is missing goes up, so that neither flatters ([OFF8]). */
export const marginText = (margin: Duration): string =>
  `${margin < 0 ? "−" : ""}${clockText(Math.abs(margin) as Duration, margin < 0 ? "up" : "down")}`;
