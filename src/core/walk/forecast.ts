import type { Course, CourseStep } from "../course/index.ts";
import type { Network, Precedence, StatesNow } from "../order/index.ts";
import type { Plan } from "../plan/index.ts";
import { notBeforeOf, planOf } from "../plan/index.ts";
import type { OutlineStep } from "../procedure/index.ts";
import { withoutTasks } from "../procedure/index.ts";
import type { Duration, Instant, StepId, TaskId } from "../units/index.ts";
import { later, longest, NO_TIME, plus } from "../units/index.ts";
import { earliestFit } from "../window/index.ts";
import { planFromStart } from "./base-plan.ts";
import type { Ledger } from "./ledger.ts";
import { isComplete } from "./ledger.ts";
import type { WalkScenario } from "./scenario-cache.ts";
import { walkScenarioOf } from "./scenario-cache.ts";
import { stateValuesOf } from "./state-values.ts";
import { completeStep, courseOf, inWork, petAt } from "./walk-course.ts";

/** How the states stand by the entries so far. */
function statesNow(ledger: Ledger): StatesNow {
  const { outline } = ledger.inForce;
  return {
    values: stateValuesOf(ledger),
    isComplete: (index) => isComplete(ledger, outline.steps[index]?.step.id as StepId),
  };
}

/** Which tasks a forecast supposes to be done. */
export interface TaskChoice {
  /** The get-aheads that are done. One with a complete step is done to its end in any case, the others not at all. */
  readonly kept: ReadonlySet<TaskId>;
  /** The tasks of which nothing more is done. */
  readonly leftOut: ReadonlySet<TaskId>;
}

/**
 * Returns the scenario to forecast. Without a choice of tasks it leaves out the steps of get-aheads that are neither
 * started nor complete ([PRO9]).
 */
function forecastScenario(
  ledger: Ledger,
  working: ReadonlyMap<StepId, Instant>,
  choice: TaskChoice | null,
): WalkScenario {
  const { outline } = ledger.inForce;
  const isIn = ({ step, task, getAhead }: OutlineStep) => {
    if (isComplete(ledger, step.id)) return true;
    if (choice === null) return !getAhead || working.has(step.id);
    if (choice.leftOut.has(task.id)) return false;
    return !getAhead || choice.kept.has(task.id) || task.steps.some(({ id }) => isComplete(ledger, id));
  };
  const leftOut = outline.steps.flatMap((entry) => (isIn(entry) ? [] : [entry.step.id]));
  const scenario = walkScenarioOf(outline, ledger.outcomes, new Set(leftOut), statesNow(ledger));
  return { ...scenario, network: linkedOverComplete(ledger, scenario.network) };
}

/**
 * Returns the network with extra links between open steps of the same lane that have complete steps between them
 * (because steps were skipped ahead or done out of order). The links keep the rest of a lane to one step at a time
 * ([PRO1]).
 */
function linkedOverComplete(ledger: Ledger, network: Network): Network {
  const { steps } = network.outline;
  const added = new Map<number, Precedence[]>();
  for (const lane of network.lanes) {
    let open: number | null = null;
    let last: number | null = null;
    for (const to of lane) {
      if (!isComplete(ledger, steps[to]?.step.id as StepId)) {
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

/** What a forecast rests on at an instant: its scenario, and the steps that have begun. */
interface Begun {
  readonly now: Duration;
  readonly scenario: WalkScenario;
  /** The complete steps with their times, and the steps in work with the finish that [FOR1] expects. */
  readonly steps: ReadonlyMap<StepId, CourseStep>;
}

function begunAt(ledger: Ledger, petZero: Instant, at: Instant, choice: TaskChoice | null = null): Begun {
  const now = petAt(ledger, at);
  const working = inWork(ledger, later(petZero, now));
  const scenario = forecastScenario(ledger, working, choice);
  const { network, whereabouts } = scenario;
  const steps = new Map<StepId, CourseStep>();
  for (const { index, step } of network.outline.steps) {
    if (!network.activity.active[index]) continue;
    const started = working.get(step.id);
    // A way that opened after somebody set out on a longer one does not make theirs shorter.
    const set = ledger.whereabouts.times[index]?.likely ?? NO_TIME;
    const likely = longest(whereabouts.times[index]?.likely ?? NO_TIME, set);
    const begun =
      completeStep(ledger, step.id) ??
      (started === undefined ? null : stepInWork(step.id, petAt(ledger, started), likely, now));
    if (begun) steps.set(step.id, begun);
  }
  return { now, scenario, steps };
}

/**
 * Returns the walk so far at an instant: complete steps, and the steps in work with the finish that is expected of them.
 * Unlike the forecast it is there when the steps to come cannot be planned. Before the clock is started nothing has
 * begun.
 */
export function begunCourseOf(ledger: Ledger, at: Instant): Course {
  const { now, scenario, steps } = begunAt(ledger, ledger.petZero ?? at, at);
  return courseOf(ledger, scenario, ledger.petZero === null ? NO_TIME : now, steps);
}

/**
 * Returns the forecast at an instant ([FOR1]). Complete steps keep their times. A step in work finishes at max(now,
 * start + likely). A step that has not started obeys [PLN1] and does not start before now. Before the clock is
 * started, the forecast is the plan of the procedure in force. The forecast of a closed walk has only the complete steps. Returns
 * `null` when there is a deadlock, or when a remaining step does not fit any window.
 *
 * Get-aheads of which nothing is begun are left out, unless `choice` says which tasks are done.
 */
export function forecastOf(ledger: Ledger, at: Instant, choice: TaskChoice | null = null): Course | null {
  return forecastWith(ledger, at, choice).course;
}

/**
 * Returns the step to come for which there is no forecast at an instant, since it fits no span of its windows any more;
 * `null` when every step fits, in a deadlock, and before the clock is started.
 */
export function unfitStepOf(ledger: Ledger, at: Instant): StepId | null {
  return forecastWith(ledger, at, null).unfit;
}

/** A forecast, or the step that keeps it from being made, where it is one. */
interface Forecast {
  readonly course: Course | null;
  readonly unfit: StepId | null;
}

function forecastWith(ledger: Ledger, at: Instant, choice: TaskChoice | null): Forecast {
  const { petZero } = ledger;
  if (petZero === null) return { course: planWith(ledger, choice).timeline?.course ?? null, unfit: null };
  const { outline } = ledger.inForce;
  const { now, scenario, steps } = begunAt(ledger, petZero, at, choice);
  const { network, whereabouts } = scenario;
  if (network.ring.length > 0) return { course: null, unfit: null };
  const found = new Map(steps);
  for (const index of network.order) {
    const entry = outline.steps[index];
    if (!entry || found.has(entry.step.id) || ledger.phase === "closed") continue;
    const step = stepToCome(entry, whereabouts.times[index]?.likely ?? NO_TIME);
    if (!step) return { course: null, unfit: entry.step.id };
    found.set(step.step, step);
  }
  const inReadingOrder = outline.steps.flatMap(({ step }): [StepId, CourseStep][] => {
    const one = found.get(step.id);
    return one ? [[step.id, one]] : [];
  });
  return { course: courseOf(ledger, scenario, now, new Map(inReadingOrder)), unfit: null };

  function stepToCome(entry: OutlineStep, length: Duration): CourseStep | null {
    const { index, step } = entry;
    const notBefore = notBeforeOf(entry);
    let ready = notBefore > now ? notBefore : now;
    for (const { from, lag } of network.before[index] ?? []) {
      const lets = plus(found.get(outline.steps[from]?.step.id as StepId)?.finish ?? NO_TIME, lag);
      if (lets > ready) ready = lets;
    }
    const fit = earliestFit(ready, length, step.within, ledger.windows);
    return fit && { step: step.id, start: fit.start, finish: plus(fit.start, length), stage: "planned" };
  }
}

/** The plan of the procedure in force, or the same with a choice of its tasks. */
function planWith(ledger: Ledger, choice: TaskChoice | null): Plan {
  const base = planFromStart(ledger);
  if (choice === null) return base;
  const { start, light } = base;
  return planOf(withoutTasks(base.outline, choice.leftOut), { start, light, getAheads: choice.kept });
}

/** Returns a step in work that finishes after its likely duration, or now when that time has passed. */
function stepInWork(step: StepId, start: Duration, likely: Duration, now: Duration): CourseStep {
  const due = plus(start, likely);
  return { step, start, finish: due > now ? due : now, stage: "in-work" };
}
