import type { Review } from "../../core/review/index.ts";
import type { Duration } from "../../core/units/index.ts";

/** How far a lane was off the plan from a PET on. */
export interface DriftPoint {
  readonly pet: Duration;
  /** Actual minus planned finish of the step that was completed then; above zero is behind. */
  readonly behind: Duration;
}

/** For each lane, in the order of `crew`, how far it was off the plan each time one of its planned steps was done. */
export function driftOf({ outline, steps }: Review): DriftPoint[][] {
  return outline.crew.map((_, lane) =>
    steps
      .flatMap(({ step, ending, actual, finishDifference }) =>
        ending === "done" &&
        actual &&
        finishDifference !== null &&
        outline.step(step)?.performers.includes(lane)
          ? [{ pet: actual.finish, behind: finishDifference }]
          : [],
      )
      .sort((a, b) => a.pet - b.pet),
  );
}

/** The largest and the last drift of a lane; `null` for a lane with no planned step done. */
export function driftSummary(points: readonly DriftPoint[]): {
  readonly most: DriftPoint;
  readonly last: DriftPoint;
} | null {
  const [first] = points;
  const last = points.at(-1);
  if (!first || !last) return null;
  const most = points.reduce(
    (so, point) => (Math.abs(point.behind) > Math.abs(so.behind) ? point : so),
    first,
  );
  return { most, last };
}
