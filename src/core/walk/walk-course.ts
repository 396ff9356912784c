import type { Course, CourseStep } from "../course/index.ts";
import type { DecisionId, Duration, Instant, StepId } from "../units/index.ts";
import { between, NO_TIME } from "../units/index.ts";
import { startOf, stepOfLane } from "./gate.ts";
import type { Ledger } from "./ledger.ts";
import { progressOf } from "./ledger.ts";
import type { WalkScenario } from "./scenario-cache.ts";
import { statesGivenIn } from "./state-values.ts";

/**
 * Returns the steps in work at an instant, which have started but are not complete, with their starts. A closed walk
 * has none.
 */
export function inWork(ledger: Ledger, at: Instant): Map<StepId, Instant> {
  const found = new Map<StepId, Instant>();
  if (ledger.petZero === null || ledger.phase === "closed") return found;
  for (const lane of ledger.lanes.keys()) {
    const entry = stepOfLane(ledger, lane);
    if (!entry || found.has(entry.step.id)) continue;
    const start = startOf(ledger, entry);
    if (start && start.hold === null && start.at <= at) found.set(entry.step.id, start.at);
  }
  return found;
}

/**
 * Returns the PET at an instant. It stops when the walk is closed. Before the clock is started, it counts from the
 * opening of the walk.
 */
export function petAt({ petZero, opened, closed }: Ledger, at: Instant): Duration {
  return between(petZero ?? opened.at, closed && closed.at < at ? closed.at : at);
}

/** Returns a complete step with its actual times in PET, or `null` for a step that is not complete. */
export function completeStep(ledger: Ledger, step: StepId): CourseStep | null {
  const { status, start, finish } = progressOf(ledger, step);
  if (status === "open" || start === null || finish === null) return null;
  return { step, start: petAt(ledger, start), finish: petAt(ledger, finish), stage: status };
}

/**
 * Builds a course of a walk from the given steps, with the holds, decisions, item corrections and states given so
 * far. `now` is a PET.
 */
export function courseOf(
  ledger: Ledger,
  { network, whereabouts }: WalkScenario,
  now: Duration,
  steps: ReadonlyMap<StepId, CourseStep>,
): Course {
  const pet = (at: Instant) => petAt(ledger, at);
  let finish = NO_TIME;
  for (const step of steps.values()) if (step.finish > finish) finish = step.finish;
  return {
    outline: ledger.inForce.outline,
    network,
    whereabouts,
    windows: ledger.windows,
    holds: ledger.holds.map(({ from, until }) => ({
      start: pet(from),
      finish: until === null ? null : pet(until),
    })),
    decided: new Map<DecisionId, Duration>([...ledger.decidedAt].map(([name, at]) => [name, pet(at)])),
    corrections: [...ledger.moves].flatMap(({ at, item, to, step }) =>
      step === null ? [{ at: pet(at), item, to }] : [],
    ),
    statesGiven: statesGivenIn(ledger).map(({ at, state, value }) => ({ at: pet(at), state, value })),
    steps,
    now,
    finish,
  };
}

/**
 * Returns the walk as flown up to an instant: complete steps with their actual times, and steps in work up to that
 * instant. It contains no forecast steps.
 */
export function flownCourseOf(ledger: Ledger, at: Instant): Course {
  const now = petAt(ledger, at);
  const working = inWork(ledger, at);
  const steps = new Map<StepId, CourseStep>();
  for (const { step } of ledger.inForce.outline.steps) {
    const started = working.get(step.id);
    const flown =
      completeStep(ledger, step.id) ??
      (started === undefined
        ? null
        : { step: step.id, start: petAt(ledger, started), finish: now, stage: "in-work" as const });
    if (flown) steps.set(step.id, flown);
  }
  return courseOf(ledger, ledger, now, steps);
}
