/** A point of a layout, in the unit of the distances. */
export interface FlatPoint {
  readonly x: number;
  readonly y: number;
}

/** What a layout is worked out from. */
export interface StressCase {
  /** The wished distance of each pair, by index in both directions; above zero. */
  readonly distances: readonly (readonly number[])[];
  /** Where a point lies already and stays; `null` for one that is to be laid out. */
  readonly fixed: readonly (FlatPoint | null)[];
}

/** No more sweeps than this are made. */
const MOST_SWEEPS = 2000;
/** A layout is settled when a sweep lowers its stress by no more than this share of it. */
const SETTLED = 1e-13;

/**
 * The stress of a layout: the sum over all pairs of `(distance in the layout − wished distance)²`, divided by the square
 * of the wished distance (Gansner, Koren and North 2004, equation 1).
 */
export function stressOf({ distances }: StressCase, points: readonly FlatPoint[]): number {
  let stress = 0;
  for (const [i, a] of points.entries()) {
    for (let j = i + 1; j < points.length; j += 1) {
      const b = points[j] as FlatPoint;
      const wished = distances[i]?.[j] ?? 1;
      const off = Math.hypot(a.x - b.x, a.y - b.y) / wished - 1;
      stress += off * off;
    }
  }
  return stress;
}

/**
 * Moves points, one after another, to where the majorizing function of the stress is least, until the layout is settled
 * (SMACOF, de Leeuw 1977, point by point). The stress never rises. Returns the layout after each sweep's last point; the
 * same case and beginning give the same layout.
 */
export function settled(
  problem: StressCase,
  beginning: readonly FlatPoint[],
  onSweep: (stress: number) => void = () => {},
): readonly FlatPoint[] {
  const points = beginning.map((point, index) => ({ ...(problem.fixed[index] ?? point) }));
  const free = points.flatMap((_, index) => (problem.fixed[index] ? [] : [index]));
  let stress = stressOf(problem, points);
  for (let sweep = 0; sweep < MOST_SWEEPS && free.length > 0 && points.length > 1; sweep += 1) {
    for (const index of free) moveOne(problem, points, index);
    const next = stressOf(problem, points);
    onSweep(next);
    if (stress - next <= SETTLED * stress) break;
    stress = next;
  }
  return points;
}

function moveOne({ distances }: StressCase, points: { x: number; y: number }[], index: number): void {
  const own = points[index];
  if (!own) return;
  let [x, y, weights] = [0, 0, 0];
  for (const [other, point] of points.entries()) {
    if (other === index) continue;
    const wished = distances[index]?.[other] ?? 1;
    const weight = 1 / (wished * wished);
    const apart = Math.hypot(own.x - point.x, own.y - point.y);
    const pull = apart > 0 ? wished / apart : 0;
    x += weight * (point.x + pull * (own.x - point.x));
    y += weight * (point.y + pull * (own.y - point.y));
    weights += weight;
  }
  own.x = x / weights;
  own.y = y / weights;
}

/** How many beginnings are tried: a circle in the order of the file, and seeded ones. */
const BEGINNINGS = 6;

/** The layout of least stress that is found from several beginnings. */
export function leastStress(problem: StressCase, chance: () => number): readonly FlatPoint[] {
  const count = problem.fixed.length;
  const size = Math.max(...problem.distances.flat(), 1);
  const given = problem.fixed.filter((point) => point !== null);
  const middle = {
    x: given.reduce((sum, { x }) => sum + x, 0) / Math.max(1, given.length),
    y: given.reduce((sum, { y }) => sum + y, 0) / Math.max(1, given.length),
  };
  const circle = problem.fixed.map((_, index) => {
    const angle = (2 * Math.PI * index) / count;
    return { x: middle.x + (size / 2) * Math.cos(angle), y: middle.y + (size / 2) * Math.sin(angle) };
  });
  let best = settled(problem, circle);
  let least = stressOf(problem, best);
  for (let beginning = 1; beginning < BEGINNINGS; beginning += 1) {
    const strewn = circle.map(() => ({
      x: middle.x + (chance() - 0.5) * size,
      y: middle.y + (chance() - 0.5) * size,
    }));
    const found = settled(problem, strewn);
    const stress = stressOf(problem, found);
    // What is only better by rounding keeps the earlier one, so that it is the same on every machine.
    if (stress < least * (1 - 1e-6)) [best, least] = [found, stress];
  }
  return best;
}
