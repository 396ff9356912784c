import { quickselect } from "d3-array";

/** How far from a whole number a place may be and still count as it, in units of the last digit (as in R). */
const FUZZ = 4 * Number.EPSILON;

/**
 * Returns the quantile of some values, which need not be sorted, by the definition 8 of Hyndman and Fan (1996), nearly free of
 * bias in the median whatever the distribution. `null` without values.
 */
export function quantile(values: ArrayLike<number>, share: number): number | null {
  const count = values.length;
  const place = (count + 1 / 3) * share + 1 / 3;
  const whole = Math.floor(place + FUZZ * Math.max(1, place));
  const rest = Math.abs(place - whole) < FUZZ * Math.max(1, place) ? 0 : place - whole;
  const [at, next] = [Math.max(0, Math.min(count, whole) - 1), Math.max(0, Math.min(count - 1, whole))];
  // Two of the values are wanted in their order, for which the others need not be sorted.
  const chosen = Float64Array.from(values);
  quickselect(chosen, at);
  if (next > at) quickselect(chosen, next, at + 1);
  const [from, to] = [chosen[at], chosen[next]];
  if (from === undefined || to === undefined) return null;
  return from + rest * (to - from);
}

/** The median: the middle value, or the mean of the two in the middle. `null` without values. */
export function median(values: ArrayLike<number>): number | null {
  return quantile(values, 0.5);
}

/** What makes the median of absolute deviations a standard deviation where values are normally distributed. */
const TO_DEVIATION = 1.4826;

/** Returns 1.4826 times the median of the absolute deviations from the median; `null` without values. */
export function medianSpread(values: readonly number[]): number | null {
  const middle = median(values);
  if (middle === null) return null;
  const spread = median(values.map((value) => Math.abs(value - middle)));
  return spread === null ? null : TO_DEVIATION * spread;
}
