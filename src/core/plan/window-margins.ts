import type { Stretch } from "../course/index.ts";
import type { Outline, OutlineStep } from "../procedure/index.ts";
import type { Duration, StepId, WindowId } from "../units/index.ts";
import { minus } from "../units/index.ts";
import type { WindowSpans } from "../window/index.ts";

/** How much later the step that is tightest in a window could start and still lie in its span ([PLN5]). */
export interface WindowMargin {
  readonly window: WindowId;
  /** The step with the least margin. */
  readonly step: StepId;
  /** The end of the span in which the step lies, less the finish of the step; zero or more. */
  readonly margin: Duration;
}

/**
 * The margin of every window that a step lies in, in the order of the procedure. `stretchOf` gives the times of a step,
 * or `null` when it is not performed. Windows that are not known, or that no step names, are left out; of equal margins
 * the first step in reading order counts.
 */
export function windowMargins(
  outline: Outline,
  windows: WindowSpans,
  stretchOf: (entry: OutlineStep) => Stretch | null,
): WindowMargin[] {
  const least = new Map<WindowId, WindowMargin>();
  for (const entry of outline.steps) {
    if (entry.step.within.length === 0) continue;
    const stretch = stretchOf(entry);
    if (!stretch) continue;
    for (const window of entry.step.within) {
      const over = (windows.get(window) ?? []).filter(
        ({ from, to }) => from <= stretch.start && stretch.finish <= to,
      );
      // Where spans overlap the step may stay in the one that ends last.
      const end = over.reduce<Duration | null>(
        (most, { to }) => (most !== null && most >= to ? most : to),
        null,
      );
      const margin = end === null ? null : minus(end, stretch.finish);
      const known = least.get(window);
      if (margin !== null && (!known || margin < known.margin)) {
        least.set(window, { window, step: entry.step.id, margin });
      }
    }
  }
  return outline.procedure.windows.flatMap(({ id }) => least.get(id) ?? []);
}
