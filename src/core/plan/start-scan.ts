import type { Light } from "../light/index.ts";
import type { Outline } from "../procedure/index.ts";
import type { Duration, Instant } from "../units/index.ts";
import { later, NO_TIME } from "../units/index.ts";
import { contactWindowsOf, windowSpansOf } from "../window/index.ts";
import { planOf } from "./plan.ts";
import { sampleRisk } from "./risk.ts";
import { riskModelOf } from "./risk-model.ts";
import type { EarliestTimes } from "./schedule.ts";
import { earliestTimes } from "./schedule.ts";
import type { WindowMargin } from "./window-margins.ts";
import { windowMargins } from "./window-margins.ts";

/** The result of planning with one start. */
export interface StartTried {
  readonly start: Instant;
  /** The PET of the finish; `null` when a step does not fit any window. */
  readonly finish: Duration | null;
  /** The total time by which windows delay steps. */
  readonly waits: Duration;
  /** Elapsed limit − finish; `null` without a limit or a finish. */
  readonly margin: Duration | null;
  /** The margin of every window that a step lies in; empty without a finish. */
  readonly windows: readonly WindowMargin[];
}

/** What sampling says of one start ([PLN5]). Shares are of all samples, from 0 to 1. */
export interface StartChance {
  /** In which every step fits its windows. */
  readonly fits: number;
  /** In which the walk is over within the elapsed limit; `null` without a limit. */
  readonly withinLimit: number | null;
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
    const isPlanned = (at: number) => finish !== null && network.activity.active[at] === true;
    tried.push({
      start,
      finish,
      waits: finish === null ? NO_TIME : windowWaits(earliest),
      margin,
      windows: windowMargins(outline, windows, ({ index: at }) =>
        isPlanned(at)
          ? { start: earliest.start[at] as Duration, finish: earliest.finish[at] as Duration }
          : null,
      ),
    });
    const least = best === null ? null : (tried[best]?.finish ?? null);
    if (finish !== null && (least === null || finish < least)) best = index;
  }
  return { tried, best };
}

/**
 * A function that samples the durations of a procedure with one start, with the seed of all figures of risk, for whoever
 * asks for many starts. Decisions come out as expected, and get-aheads are left out. `null` when the procedure cannot be
 * planned at all.
 */
export function startChances(
  outline: Outline,
): ((light: Light | null, start: Instant, samples: number) => StartChance) | null {
  const { network, whereabouts, findings } = planOf(outline);
  if (network.ring.length > 0 || findings.some(({ code }) => code === "place/no-way")) return null;
  return (light, start, samples) => {
    const windows = windowSpansOf(outline.procedure, start, light);
    const { unfit, withinLimit } = sampleRisk(riskModelOf({ network, whereabouts, windows }), samples, SEED);
    return { fits: 1 - unfit, withinLimit };
  };
}

/**
 * Whether the start of a walk makes a difference to its plan: some step lies in a window that comes with the time of
 * day. `unknown` when such windows are named, and none of them is known with this light.
 */
export function startMatters({ procedure, steps }: Outline, light: Light | null): "yes" | "no" | "unknown" {
  const named = new Set(steps.flatMap(({ step }) => step.within));
  const passes = new Set(light?.contact ? contactWindowsOf(procedure) : []);
  let isUnknown = false;
  for (const { id, kind, spans } of procedure.windows) {
    if (!named.has(id)) continue;
    if (passes.has(id) || spans?.some(({ clock }) => clock === "utc")) return "yes";
    if (spans || kind === "listed") continue;
    if (light?.spans) return "yes";
    isUnknown = true;
  }
  return isUnknown ? "unknown" : "no";
}

const SEED = 1;

/** Returns the total time by which windows delay steps, counting each step once. */
function windowWaits({ start, ready }: EarliestTimes): Duration {
  return start.reduce((sum, at, index) => sum + at - (ready[index] ?? at), 0) as Duration;
}
