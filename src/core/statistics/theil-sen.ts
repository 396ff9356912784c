import { median } from "./quantile.ts";

/**
 * Returns the median of the slopes between any two points of the same group with different x (Theil 1950, Sen 1968), which a few
 * outliers do not move; `null` when there are no such points.
 */
export function theilSen(
  groups: readonly (readonly { readonly x: number; readonly y: number }[])[],
): number | null {
  // A hundred rehearsals of three hundred steps have a million and a half of such pairs.
  const most = groups.reduce((sum, { length }) => sum + (length * (length - 1)) / 2, 0);
  const slopes = new Float64Array(most);
  let found = 0;
  for (const points of groups) {
    for (const [at, one] of points.entries()) {
      for (let behind = at + 1; behind < points.length; behind += 1) {
        const other = points[behind];
        if (!other || one.x === other.x) continue;
        slopes[found] = (other.y - one.y) / (other.x - one.x);
        found += 1;
      }
    }
  }
  return median(slopes.subarray(0, found));
}
