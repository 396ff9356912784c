import type { Link, Network } from "../order/index.ts";
import { earliestFit } from "../plan/index.ts";
import type { Duration, Instant } from "../units/index.ts";
import { between, later, NO_TIME, plus } from "../units/index.ts";
import { basePlanOf } from "./base-plan.ts";
import { startOf } from "./gate.ts";
import type { Ledger } from "./ledger.ts";
import { isComplete } from "./ledger.ts";
import type { WalkScenario } from "./scenario-cache.ts";
import { walkScenarioOf } from "./scenario-cache.ts";

/** When a step started or will start, and finished or will finish; both in PET. */
export interface ForecastStep {
  readonly start: Duration;
  readonly finish: Duration;
  /** Complete, in work, or still to come. */
  readonly stage: "complete" | "in-work" | "to-come";
}

/** How the rest of the walk would go ([FOR1]). */
export interface Forecast {
  /** By reading order index; `null` for a step that is not in it (inactive, or a get-ahead not begun). */
  readonly steps: readonly (ForecastStep | null)[];
  /** PET at which the last step is complete; zero without steps. */
  readonly finish: Duration;
  /** Elapsed limit − finish; `null` without a limit. */
  readonly margin: Duration | null;
  /** The network it runs over, and the times of its steps. */
  readonly scenario: WalkScenario;
}

/** The steps in work at an instant, by reading order index: started and not complete. Closed walks have none. */
export function inWork(ledger: Ledger, at: Instant): Map<number, Instant> {
  const found = new Map<number, Instant>();
  if (ledger.petZero === null || ledger.phase === "closed") return found;
  for (const [lane, { next }] of ledger.lanes.entries()) {
    const index = ledger.network.lanes[lane]?.[next];
    if (index === undefined || found.has(index)) continue;
    const opening = startOf(ledger, index);
    if (opening && !opening.held && opening.at <= at) found.set(index, opening.at);
  }
  return found;
}

/** The scenario a forecast runs over: get-aheads that are neither begun nor complete are left out ([PRO9]). */
function forecastScenario(ledger: Ledger, working: ReadonlyMap<number, Instant>): WalkScenario {
  const { outline } = ledger.opened;
  const leftOut = outline.steps.filter(
    ({ index, getAhead }) => getAhead && !isComplete(ledger, index) && !working.has(index),
  );
  return walkScenarioOf(outline, ledger.outcomes, new Set(leftOut.map(({ index }) => index)));
}

/**
 * The network with each step to come linked to the open step before it in its lane, where complete steps stand between them
 * (skipped ahead, done out of order): one at a time ([PRO1]) holds for what is left of a lane.
 */
function linkedOverComplete(ledger: Ledger, network: Network): Network {
  const added = new Map<number, Link[]>();
  for (const lane of network.lanes) {
    let open: number | null = null;
    let last: number | null = null;
    for (const to of lane) {
      if (!isComplete(ledger, to)) {
        if (open !== null && open !== last) {
          added.set(to, [...(added.get(to) ?? []), { from: open, to, lag: NO_TIME, because: "lane" }]);
        }
        open = to;
      }
      last = to;
    }
  }
  if (added.size === 0) return network;
  const before = network.before.map((links, index) => [...links, ...(added.get(index) ?? [])]);
  return { ...network, before };
}

/**
 * The forecast at an instant: complete steps keep their times, a step in work finishes at max(now, start + likely), a step
 * not started obeys [PLN1], not before now. `null` in a deadlock, or when a step to come
 * fits no window any more. Before the clock is started the plan is the forecast.
 */
export function forecastOf(ledger: Ledger, at: Instant): Forecast | null {
  const { petZero, opened } = ledger;
  if (petZero === null) return plannedForecast(ledger);
  const { outline } = opened;
  const now = between(petZero, ledger.closed && ledger.closed.at < at ? ledger.closed.at : at);
  const working = inWork(ledger, later(petZero, now));
  const planned = forecastScenario(ledger, working);
  const scenario = { ...planned, network: linkedOverComplete(ledger, planned.network) };
  const { network, whereabouts } = scenario;
  if (network.ring.length > 0) return null;
  const steps: (ForecastStep | null)[] = outline.steps.map(() => null);
  let finish = 0 as Duration;
  for (const index of network.order) {
    const step = forecastStep(ledger, index, now, working);
    if (ledger.phase === "closed" && step?.stage !== "complete") continue;
    const forecast = step ?? stepToCome(index, now);
    if (!forecast) return null;
    steps[index] = forecast;
    if (forecast.finish > finish) finish = forecast.finish;
  }
  const limit = outline.procedure.limits.elapsed;
  const margin = limit === undefined ? null : ((limit - finish) as Duration);
  return { steps, finish, margin, scenario };

  function stepToCome(index: number, earliest: Duration): ForecastStep | null {
    let ready = earliest;
    for (const { from, lag } of network.before[index] ?? []) {
      const lets = plus(steps[from]?.finish ?? (0 as Duration), lag);
      if (lets > ready) ready = lets;
    }
    const length = whereabouts.times[index]?.likely ?? (0 as Duration);
    const fit = earliestFit(ready, length, outline.steps[index]?.step.within ?? [], ledger.windows);
    return fit ? { start: fit.start, finish: plus(fit.start, length), stage: "to-come" } : null;
  }
}

function plannedForecast(ledger: Ledger): Forecast | null {
  const { timeline, margin, network, whereabouts } = basePlanOf(ledger);
  if (!timeline) return null;
  const steps = timeline.steps.map((step): ForecastStep | null =>
    step ? { start: step.start, finish: step.finish, stage: "to-come" } : null,
  );
  return { steps, finish: timeline.finish, margin, scenario: { network, whereabouts } };
}

/** A step that is complete or in work; `null` when it is still to come. */
function forecastStep(
  ledger: Ledger,
  index: number,
  now: Duration,
  working: ReadonlyMap<number, Instant>,
): ForecastStep | null {
  const petZero = ledger.petZero ?? ledger.opened.at;
  const progress = ledger.steps[index];
  if (progress?.start != null && progress.finish !== null) {
    return {
      start: between(petZero, progress.start),
      finish: between(petZero, progress.finish),
      stage: "complete",
    };
  }
  const started = working.get(index);
  if (started === undefined) return null;
  const start = between(petZero, started);
  const due = plus(start, ledger.whereabouts.times[index]?.likely ?? (0 as Duration));
  return { start, finish: due > now ? due : now, stage: "in-work" };
}
