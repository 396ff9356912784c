import type { Timeline, WaitOn } from "../../core/plan/index.ts";
import type { Outline, OutlineStep } from "../../core/procedure/index.ts";
import type { Duration } from "../../core/units/index.ts";
import { between, NO_TIME } from "../../core/units/index.ts";
import type { WalkState } from "../../core/walk/index.ts";
import type { LaneBar } from "./lane-bar.ts";

/** What a lane waits for; `null` when the log does not say. */
export type LaneWaitOn = WaitOn | { readonly hold: true } | null;

/** The time a crew member stands idle before a step; in PET. */
export interface LaneWait {
  readonly key: string;
  readonly lane: number;
  /** Reading order index of the step waited for. */
  readonly step: number;
  readonly from: Duration;
  readonly to: Duration;
  readonly on: LaneWaitOn;
}

/** The waits of a plan ([PLN3]). */
export function plannedWaitsOf(outline: Outline, timeline: Timeline): LaneWait[] {
  return timeline.steps.flatMap((step) =>
    (step?.waits ?? []).map((wait) => {
      const lane = outline.lane(wait.crew);
      const start = step?.start ?? (0 as Duration);
      return {
        key: `${lane} ${step?.index}`,
        lane,
        step: step?.index ?? -1,
        from: (start - wait.time) as Duration,
        to: start,
        on: wait.on,
      };
    }),
  );
}

/** Shorter gaps are the time between two taps. */
const SHORTEST_GAP = 5_000;

/** The waits of a walk as it went and as forecast: every gap in a lane, with what let the step behind it start last. */
export function flownWaitsOf(state: WalkState, lanes: readonly (readonly LaneBar[])[]): LaneWait[] {
  const waits: LaneWait[] = [];
  for (const [lane, bars] of lanes.entries()) {
    let free = 0 as Duration;
    for (const { key, entry, flown } of bars) {
      if (!flown) continue;
      if (flown.stage !== "skipped" && flown.start - free > SHORTEST_GAP) {
        const on = reasonOf(state, lanes, lane, entry, free, flown.start);
        waits.push({ key, lane, step: entry.index, from: free, to: flown.start, on });
      }
      if (flown.finish > free) free = flown.finish;
    }
  }
  return waits;
}

function reasonOf(
  state: WalkState,
  lanes: readonly (readonly LaneBar[])[],
  lane: number,
  { index: step, performers }: OutlineStep,
  free: Duration,
  start: Duration,
): LaneWaitOn {
  const { ledger, forecast } = state;
  const { outline } = ledger.opened;
  const self = outline.crew[lane]?.id;
  let last: { readonly from: number; readonly lag: Duration; readonly lets: number } | null = null;
  const after = (ledger.network.before[step] ?? []).filter(({ because }) => because === "after");
  const links = [...after, ...performers.flatMap((other) => stepBefore(lanes[other] ?? [], step))];
  for (const { from, lag } of links) {
    const finish = forecast?.steps[from]?.finish;
    if (finish !== undefined && (last === null || finish + lag > last.lets))
      last = { from, lag, lets: finish + lag };
  }
  if (last === null || last.lets < start - SHORTEST_GAP) {
    const { petZero } = ledger;
    const held = ledger.holds.some(
      (hold) =>
        petZero !== null &&
        between(petZero, hold.from) < start &&
        (hold.until === null || between(petZero, hold.until) > free),
    );
    if (held) return { hold: true };
    const [window] = outline.steps[step]?.step.within ?? [];
    if (window !== undefined && ledger.windows.get(window)) return { window };
  }
  const predecessor = outline.steps[last?.from ?? -1]?.step;
  if (!last || !predecessor) return null;
  if (last.lag > 0) return { lag: predecessor.id };
  const others = predecessor.by.filter((crew) => crew !== self);
  return others.length > 0 ? { crew: others } : null;
}

/** The step a lane really does before another; links of the network may lead to steps the forecast leaves out. */
function stepBefore(
  bars: readonly LaneBar[],
  step: number,
): { readonly from: number; readonly lag: Duration }[] {
  const position = bars.findIndex(({ entry }) => entry.index === step);
  const before = bars.slice(0, Math.max(0, position)).findLast(({ flown }) => flown !== null);
  return before ? [{ from: before.entry.index, lag: NO_TIME }] : [];
}
