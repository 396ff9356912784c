import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";

/** A reading above full by more than this share of full is impossible; gauges show a little more than full. */
const ABOVE_FULL_SHARE = 0.1;

/** What a reading is held against: full, in the unit of the supply. */
interface Gauge {
  readonly full: number;
  readonly unit: string;
}

/**
 * Returns why a reading of a supply cannot be true, as a sentence: below zero, or above full by more than a tenth of it
 * ([OFF7]). Returns `null` for a reading that can be true. A full that is not above zero sets no upper bound.
 */
export function impossibleReading({ full, unit }: Gauge, value: number): Message | null {
  if (value < 0) return message("supply/below-zero", { value: { value, unit } });
  if (full > 0 && value > full * (1 + ABOVE_FULL_SHARE)) {
    return message("supply/above-full", { value: { value, unit }, full: { value: full, unit } });
  }
  return null;
}
