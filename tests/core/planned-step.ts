import type { CourseStep, Wait } from "../../src/core/course/index.ts";
import { waitsBefore } from "../../src/core/course/index.ts";
import type { Slack, Timeline } from "../../src/core/plan/index.ts";
import type { Duration, StepId } from "../../src/core/units/index.ts";

/** A wait as tests look at it: who, how long in ms, and for what. */
export interface PlainWait {
  readonly crew: string;
  readonly time: Duration;
  readonly on: Wait["on"];
}

/** A planned step with its slack and its waits. */
export type PlannedStep = CourseStep & Slack & { readonly waits: readonly PlainWait[] };

/** The waits before a step of a course. */
export function plainWaits(waits: readonly Wait[]): PlainWait[] {
  return waits.map(({ crew, from, to, on }) => ({ crew, time: (to - from) as Duration, on }));
}

/** A step of a timeline by its id; `null` when it is not planned. */
export function plannedStep({ course, slack }: Timeline, id: string): PlannedStep | null {
  const step = course.steps.get(id as StepId);
  const late = slack.get(id as StepId);
  return step && late ? { ...step, ...late, waits: plainWaits(waitsBefore(course, step.step)) } : null;
}

/** The steps of a timeline in reading order. */
export function plannedSteps(timeline: Timeline): PlannedStep[] {
  return [...timeline.course.steps.keys()].flatMap((id) => plannedStep(timeline, id) ?? []);
}
