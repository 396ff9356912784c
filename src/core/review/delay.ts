import type { Course, CourseStep } from "../course/index.ts";
import type { Duration, StepId } from "../units/index.ts";
import { minus, NO_TIME } from "../units/index.ts";

/** A step of the chain that led to the last finish, with its share of the delay. Durations in ms. */
export interface DelayShare {
  readonly step: StepId;
  /** How much later it made the end; below zero for earlier. The wait before it is part of it. */
  readonly share: Duration;
  /** How long it took, and how long it was planned to take; `null` for one that is not in the plan. */
  readonly time: Duration;
  readonly plannedTime: Duration | null;
  /** The bounds of its duration in the procedure. */
  readonly low: Duration;
  readonly high: Duration;
}

/**
 * Returns what made the delay: the chain of steps that led to the last finish, from the first one on, each with what it
 * added ([REV6]). The chain goes back from the step that was done last, each time to the predecessor that was done last
 * before it began. The shares add up to the difference of the last step of the chain that was planned, and what was not
 * planned has its whole time and the wait before it for its share. Empty when nothing was done.
 */
export function delayOf(flown: Course, planned: Course | null): readonly DelayShare[] {
  let explained = NO_TIME;
  let before = NO_TIME;
  return chainOf(flown).flatMap((one): DelayShare[] => {
    const entry = flown.outline.step(one.step);
    const bounds = entry && flown.whereabouts.times[entry.index];
    const plan = planned?.steps.get(one.step) ?? null;
    const share = plan ? minus(minus(one.finish, plan.finish), explained) : minus(one.finish, before);
    explained = (explained + share) as Duration;
    before = one.finish;
    if (!bounds) return [];
    const time = minus(one.finish, one.start);
    const plannedTime = plan && minus(plan.finish, plan.start);
    return [{ step: one.step, share, time, plannedTime, low: bounds.low, high: bounds.high }];
  });
}

/** Returns the steps that led to the last finish, in order of time. */
function chainOf({ steps, network, outline }: Course): readonly CourseStep[] {
  const chain: CourseStep[] = [];
  let at = latestOf([...steps.values()].filter(({ stage }) => stage === "done"));
  while (at !== null && !chain.includes(at)) {
    const { step, start } = at;
    chain.unshift(at);
    const predecessors = network.before[outline.step(step)?.index ?? -1] ?? [];
    at = latestOf(
      predecessors.flatMap(({ from }) => {
        const id = outline.steps[from]?.step.id;
        const one = id === undefined ? undefined : steps.get(id);
        return one?.stage === "done" && one.finish <= start ? [one] : [];
      }),
    );
  }
  return chain;
}

function latestOf(steps: readonly CourseStep[]): CourseStep | null {
  return steps.reduce<CourseStep | null>(
    (latest, one) => (latest && latest.finish >= one.finish ? latest : one),
    null,
  );
}
