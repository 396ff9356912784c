import { max, min, quantileSorted } from "d3-array";

/** How measured times are spread, in ms. */
export interface Spread {
  readonly min: number;
  readonly median: number;
  readonly p95: number;
  readonly max: number;
}

/** The spread of times, of which there must be one at least. */
export function spreadOf(times: readonly number[]): Spread {
  const sorted = times.toSorted((a, b) => a - b);
  const [least, most] = [min(sorted), max(sorted)];
  const [median, p95] = [quantileSorted(sorted, 0.5), quantileSorted(sorted, 0.95)];
  if (least === undefined || most === undefined || median === undefined || p95 === undefined)
    throw new RangeError("nothing was measured");
  return { min: least, median, p95, max: most };
}

/** A spread in words. */
export function spreadWords({ min: least, median, p95, max: most }: Spread): string {
  const ms = (time: number) => `${time.toFixed(1)} ms`;
  return `min ${ms(least)}, median ${ms(median)}, 95 % ${ms(p95)}, max ${ms(most)}`;
}
