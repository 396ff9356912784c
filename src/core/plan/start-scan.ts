import type { Light } from "../light/index.ts";
import type { Outline } from "../procedure/index.ts";
import type { Duration, Instant } from "../units/index.ts";
import { later, NO_TIME } from "../units/index.ts";
import { windowSpansOf } from "../window/index.ts";
import { planOf } from "./plan.ts";
import type { EarliestTimes } from "./schedule.ts";
import { earliestTimes } from "./schedule.ts";

/** The result of planning with one start. */
export interface StartTried {
  readonly start: Instant;
  /** The PET of the finish; `null` when a step does not fit any window. */
  readonly finish: Duration | null;
  /** The total time by which windows delay steps. */
  readonly waits: Duration;
  /** Elapsed limit − finish; `null` without a limit or a finish. */
  readonly margin: Duration | null;
}

/** The results of several starts, in the order in which they were tried. */
export interface StartScan {
  readonly tried: readonly StartTried[];
  /**
   * The index of the start with the shortest PET at the finish (the earliest start when several are equal); `null`
   * when no start leads to a finish.
   */
  readonly best: number | null;
}

/**
 * Plans with `count` starts, `step` apart, beginning at `from`. `light` must extend at least `HORIZON` beyond the
 * last start. Decisions come out as expected, and get-aheads are left out. Returns `null` when the procedure cannot
 * be planned at all.
 */
export function scanStarts(
  outline: Outline,
  light: Light | null,
  from: Instant,
  count: number,
  step: Duration,
): StartScan | null {
  // Everything that does not depend on the start is calculated only once.
  const { network, whereabouts, findings } = planOf(outline);
  if (network.ring.length > 0 || findings.some(({ code }) => code === "place/no-way")) return null;
  const times = whereabouts.times.map(({ likely }) => likely);
  const limit = outline.procedure.limits.elapsed;
  const tried: StartTried[] = [];
  let best: number | null = null;
  for (let index = 0; index < count; index += 1) {
    const start = later(from, (index * step) as Duration);
    const windows = windowSpansOf(outline.procedure, start, light);
    const earliest = earliestTimes({ network, times, windows });
    const finish = earliest.unfit.length === 0 ? earliest.end : null;
    const margin = limit === undefined || finish === null ? null : ((limit - finish) as Duration);
    tried.push({ start, finish, waits: finish === null ? NO_TIME : windowWaits(earliest), margin });
    const least = best === null ? null : (tried[best]?.finish ?? null);
    if (finish !== null && (least === null || finish < least)) best = index;
  }
  return { tried, best };
}

/** Returns the total time by which windows delay steps, counting each step once. */
function windowWaits({ start, ready }: EarliestTimes): Duration {
  return start.reduce((sum, at, index) => sum + at - (ready[index] ?? at), 0) as Duration;
}
