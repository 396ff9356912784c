/** A straight line fitted through points. */
export interface FittedLine {
  readonly slope: number;
  at(x: number): number;
  /** The standard deviation of the points about the line, with n − 2 degrees of freedom; `null` for two points. */
  readonly spread: number | null;
  /** The standard error of the slope; `null` for two points. */
  readonly slopeSpread: number | null;
}

/**
 * The ordinary least squares line through points [x, y]. Returns `null` when there are fewer than two different x, or
 * when the numbers are too large to compute with.
 */
export function fittedLine(points: readonly (readonly [x: number, y: number])[]): FittedLine | null {
  const count = points.length;
  const meanX = points.reduce((sum, [x]) => sum + x, 0) / count;
  const meanY = points.reduce((sum, [, y]) => sum + y, 0) / count;
  const sxx = points.reduce((sum, [x]) => sum + (x - meanX) ** 2, 0);
  const sxy = points.reduce((sum, [x, y]) => sum + (x - meanX) * (y - meanY), 0);
  if (!(sxx > 0)) return null;
  const slope = sxy / sxx;
  const at = (x: number) => meanY + slope * (x - meanX);
  const squares = points.reduce((sum, [x, y]) => sum + (y - at(x)) ** 2, 0);
  if (!Number.isFinite(squares)) return null;
  const spread = count > 2 ? Math.sqrt(squares / (count - 2)) : null;
  return { slope, at, spread, slopeSpread: spread === null ? null : spread / Math.sqrt(sxx) };
}
