import { median } from "./quantile.ts";

/**
 * Returns the median of the slopes between any two points of the same group with different x (Theil 1950, Sen 1968), which a few
 * outliers do not move; `null` when there are no such points.
 */
export function theilSen(
  groups: readonly (readonly { readonly x: number; readonly y: number }[])[],
): number | null {
  const slopes = groups.flatMap((points) =>
    points.flatMap((one, at) =>
      points
        .slice(at + 1)
        .flatMap((other) => (one.x === other.x ? [] : [(other.y - one.y) / (other.x - one.x)])),
    ),
  );
  return median(slopes);
}
