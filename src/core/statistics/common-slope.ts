import { mean } from "./welch.ts";

/** A point of a group, and the cluster whose points may be off together. */
export interface ClusteredPoint {
  readonly cluster: string;
  readonly x: number;
  readonly y: number;
}

/** The slope that groups have in common. */
export interface CommonSlope {
  readonly slope: number;
  /** Clustered; zero when every point lies on its line. */
  readonly standardError: number;
}

/**
 * Returns the slope that all groups share, each with a level of its own (the within estimator), and its standard error, clustered
 * (Liang & Zeger 1986, with G/(G − 1) for G clusters). `null` when no group has two different x.
 */
export function commonSlope(groups: readonly (readonly ClusteredPoint[])[]): CommonSlope | null {
  const centred = groups.flatMap((points) => {
    const [middleX, middleY] = [mean(points.map(({ x }) => x)), mean(points.map(({ y }) => y))];
    return points.map(({ cluster, x, y }) => ({ cluster, x: x - middleX, y: y - middleY }));
  });
  const squares = centred.reduce((sum, { x }) => sum + x * x, 0);
  if (!(squares > 0)) return null;
  const slope = centred.reduce((sum, { x, y }) => sum + x * y, 0) / squares;
  const scores = new Map<string, number>();
  for (const { cluster, x, y } of centred)
    scores.set(cluster, (scores.get(cluster) ?? 0) + x * (y - slope * x));
  const off = [...scores.values()].reduce((sum, score) => sum + score * score, 0);
  const few = scores.size / (scores.size - 1);
  return { slope, standardError: Math.sqrt(few * off) / squares };
}
