import type { Review } from "../../core/review/index.ts";
import type { Duration } from "../../core/units/index.ts";

/** How far off the plan a lane was from a PET on. */
export interface DriftPoint {
  readonly pet: Duration;
  /** Actual − planned finish of the step that was over then; above zero is behind. */
  readonly behind: Duration;
}

/** For each lane, in the order of `crew`, how far off the plan it was each time one of its planned steps was done. */
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

/** The largest drift of a lane and the last; `null` for a lane with no planned step done. */
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
