import type { Light } from "../light/index.ts";
import type { Outline } from "../procedure/index.ts";
import type { Duration, Instant } from "../units/index.ts";
import { later, NO_TIME } from "../units/index.ts";
import { windowSpansOf } from "../window/index.ts";
import { planOf } from "./plan.ts";
import type { EarliestTimes } from "./schedule.ts";
import { earliestTimes } from "./schedule.ts";

/** What going out at an instant would come to. */
export interface StartTried {
  readonly start: Instant;
  /** PET of the finish; `null` when a step fits no window any more. */
  readonly finish: Duration | null;
  /** How long steps are put off by windows, added up. */
  readonly waits: Duration;
  /** Elapsed limit − finish; `null` without a limit or a finish. */
  readonly margin: Duration | null;
}

/** Starts tried one after the other. */
export interface StartScan {
  readonly tried: readonly StartTried[];
  /** The index of the one that finishes with the shortest PET, the earliest of equals; `null` when none does. */
  readonly best: number | null;
}

/**
 * Tries starts from `from` on, `count` of them `step` apart. `light` must reach a horizon beyond the last one. Decisions are
 * as expected, get-aheads left out. `null` when the procedure cannot be planned at all.
 */
export function scanStarts(
  outline: Outline,
  light: Light | null,
  from: Instant,
  count: number,
  step: Duration,
): StartScan | null {
  // What does not hang on the start is worked out once.
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

/** How long windows put steps off, each step counted once. */
function windowWaits({ start, ready }: EarliestTimes): Duration {
  return start.reduce((sum, at, index) => sum + at - (ready[index] ?? at), 0) as Duration;
}
