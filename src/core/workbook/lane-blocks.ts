import type { Course, CourseStep } from "../course/index.ts";
import { lanesInTime } from "../course/index.ts";
import type { Duration } from "../units/index.ts";

/** The lengths of a row of the grid, in minutes, and the most rows that one may have. */
const ROW_MINUTES = [1, 2, 5, 10, 15, 30, 60, 120, 240, 480, 1440];
const MOST_ROWS = 120;

/** What one crew member does in some rows of the grid: the steps that begin in the first of them. */
export interface LaneBlock {
  /** The row in which it begins, from 0. */
  readonly row: number;
  /** How many rows it takes, one at least. */
  readonly rows: number;
  /** In order of time; never empty. */
  readonly steps: readonly CourseStep[];
}

/** How long one row of the grid is: the shortest that gives at most 120 rows. */
export function rowLength(finish: Duration): Duration {
  const minutes = ROW_MINUTES.find((length) => finish <= length * 60_000 * MOST_ROWS);
  return ((minutes ?? Math.ceil(finish / 60_000 / MOST_ROWS)) * 60_000) as Duration;
}

/**
 * For each lane its steps as blocks of rows ([WRT11]). A block begins in the row in which its first step begins, and ends where the next
 * one begins or in the row in which its last step is complete, whichever is earlier.
 */
export function laneBlocks(course: Course, row: Duration): readonly (readonly LaneBlock[])[] {
  return lanesInTime(course).map((lane) => {
    const byRow = new Map<number, CourseStep[]>();
    for (const step of lane) {
      const at = Math.floor(step.start / row);
      byRow.set(at, [...(byRow.get(at) ?? []), step]);
    }
    const begun = [...byRow].sort(([a], [b]) => a - b);
    return begun.map(([at, steps], index) => {
      const finish = Math.max(...steps.map((step) => step.finish));
      const end = Math.max(at + 1, Math.ceil(finish / row));
      const next = begun[index + 1]?.[0] ?? end;
      return { row: at, rows: Math.min(end, next) - at, steps };
    });
  });
}
