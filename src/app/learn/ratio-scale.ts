/** The factors of the planner's likely time that are marked on the scale of a step. */
export const RATIO_MARKS = [0.5, 1, 2] as const;

const LEAST = 0.3;
const MOST = 3.4;

/** Where a factor of the likely time lies on a scale from 0 to 1: equal factors are equally far apart. What lies beyond stands at the end. */
export function onRatioScale(factor: number): number {
  const share = Math.log(factor / LEAST) / Math.log(MOST / LEAST);
  return Math.min(1, Math.max(0, share));
}

/** −1 for a factor below the scale, 1 for one above it, 0 for one on it. */
export const beyondScale = (factor: number): -1 | 0 | 1 => (factor < LEAST ? -1 : factor > MOST ? 1 : 0);
