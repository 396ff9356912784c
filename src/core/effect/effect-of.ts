import { checkOutline } from "../check/index.ts";
import type { Wait } from "../course/index.ts";
import { waitsBefore } from "../course/index.ts";
import type { Plan, PlanOptions } from "../plan/index.ts";
import { planOf, riskModelOf, sampleRisk } from "../plan/index.ts";
import type { Outline } from "../procedure/index.ts";
import type { Duration, StepId } from "../units/index.ts";
import type { FindingsEffect } from "./findings-effect.ts";
import { findingsEffect } from "./findings-effect.ts";
import type { Sides } from "./sides.ts";

/** One step in both plans; `null` on the side where it is not in the plan. */
export interface StepEffect {
  readonly id: StepId;
  /** PET of the earliest start. */
  readonly start: Sides<Duration | null>;
  readonly slack: Sides<Duration | null>;
}

/** What it comes to when one procedure takes the place of another ([CHG7]). A side without a timeline has `null`, or nothing. */
export interface Effect {
  /** PET at which the last step is complete. */
  readonly finish: Sides<Duration | null>;
  /** Elapsed limit − finish, below zero when over; `null` without a limit. */
  readonly margin: Sides<Duration | null>;
  /** Share of samples that finish within the limit, from 0 to 1; `null` without a limit. */
  readonly withinLimit: Sides<number | null>;
  readonly criticalPath: Sides<readonly StepId[]>;
  /** Every step that is in either plan: those of the plan after in reading order, then those that are only in the one before. */
  readonly steps: readonly StepEffect[];
  readonly waits: Sides<readonly Wait[]>;
  readonly findings: FindingsEffect;
  /** The plans from which the figures are. */
  readonly plans: Sides<Plan>;
}

/** What an effect may be asked with. */
export interface EffectOptions extends Pick<PlanOptions, "start" | "light"> {
  /** How many times durations are sampled on each side; with 0 there is no `withinLimit`. */
  readonly samples: number;
  readonly seed: number;
}

/** What one side comes to. */
interface Side {
  readonly plan: Plan;
  readonly withinLimit: number | null;
}

function sideOf(outline: Outline, { start, light, samples, seed }: EffectOptions): Side {
  const plan = planOf(outline, { start: start ?? null, light: light ?? null });
  const course = plan.timeline?.course;
  const withinLimit =
    course && samples > 0 ? sampleRisk(riskModelOf(course), samples, seed).withinLimit : null;
  return { plan, withinLimit };
}

/** The effect of one procedure in the place of another, each laid out: both are planned, sampled and checked in the same way. */
export function effectOf(before: Outline, after: Outline, options: EffectOptions): Effect {
  const sides: Sides<Side> = { before: sideOf(before, options), after: sideOf(after, options) };
  const both = <Value>(of: (side: Side) => Value): Sides<Value> => ({
    before: of(sides.before),
    after: of(sides.after),
  });
  const courses = both(({ plan }) => plan.timeline?.course ?? null);
  const steps = [courses.after, courses.before].flatMap((course) => [...(course?.steps.keys() ?? [])]);
  const check = { start: options.start ?? null, light: options.light ?? null };
  return {
    finish: both(({ plan }) => plan.timeline?.course.finish ?? null),
    margin: both(({ plan }) => plan.margin),
    withinLimit: both(({ withinLimit }) => withinLimit),
    criticalPath: both(({ plan }) => plan.timeline?.criticalPath ?? []),
    steps: [...new Set(steps)].map((id) => ({
      id,
      start: both(({ plan }) => plan.timeline?.course.steps.get(id)?.start ?? null),
      slack: both(({ plan }) => plan.timeline?.slack.get(id)?.slack ?? null),
    })),
    waits: both(({ plan: { timeline } }) =>
      timeline ? [...timeline.course.steps.keys()].flatMap((id) => waitsBefore(timeline.course, id)) : [],
    ),
    plans: both(({ plan }) => plan),
    findings: findingsEffect(checkOutline(before, check), checkOutline(after, check)),
  };
}
