import { checkOutline } from "../check/index.ts";
import type { Plan, PlanOptions, Wait } from "../plan/index.ts";
import { planOf, riskModelOf, sampleRisk } from "../plan/index.ts";
import type { Outline } from "../procedure/index.ts";
import type { Duration, StepId } from "../units/index.ts";
import type { FindingsEffect } from "./findings-effect.ts";
import { findingsEffect } from "./findings-effect.ts";

/** A value of the procedure before and of the one after. */
export interface Sides<Value> {
  readonly before: Value;
  readonly after: Value;
}

/** One step in both plans; `null` on the side where it is not in the plan. */
export interface StepEffect {
  readonly id: StepId;
  /** PET of the earliest start. */
  readonly start: Sides<Duration | null>;
  readonly slack: Sides<Duration | null>;
}

/** A wait of a performer before a step. */
export interface StepWait extends Wait {
  readonly step: StepId;
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
  readonly waits: Sides<readonly StepWait[]>;
  readonly findings: FindingsEffect;
}

/** What an effect may be asked with. */
export interface EffectOptions extends Pick<PlanOptions, "start" | "light"> {
  /** How many times durations are sampled on each side. */
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
  const { network, whereabouts, windows, timeline } = plan;
  const limit = outline.procedure.limits.elapsed ?? null;
  const withinLimit =
    timeline === null || limit === null
      ? null
      : sampleRisk(riskModelOf({ network, times: whereabouts.times, windows, limit }), samples, seed)
          .withinLimit;
  return { plan, withinLimit };
}

const idAt = ({ outline }: Plan, index: number): StepId[] => {
  const entry = outline.steps[index];
  return entry ? [entry.step.id] : [];
};

const timesOf = ({ plan }: Side) =>
  new Map(
    (plan.timeline?.steps ?? []).flatMap((step) =>
      step === null ? [] : idAt(plan, step.index).map((id) => [id, step] as const),
    ),
  );

/** The effect of one procedure in the place of another, each laid out: both are planned, sampled and checked in the same way. */
export function effectOf(before: Outline, after: Outline, options: EffectOptions): Effect {
  const sides: Sides<Side> = { before: sideOf(before, options), after: sideOf(after, options) };
  const both = <Value>(of: (side: Side) => Value): Sides<Value> => ({
    before: of(sides.before),
    after: of(sides.after),
  });
  const times = both(timesOf);
  const ids = new Set([...times.after.keys(), ...times.before.keys()]);
  const check = { start: options.start ?? null, light: options.light ?? null };
  return {
    finish: both(({ plan }) => plan.timeline?.finish ?? null),
    margin: both(({ plan }) => plan.margin),
    withinLimit: both(({ withinLimit }) => withinLimit),
    criticalPath: both(({ plan }) =>
      (plan.timeline?.criticalPath ?? []).flatMap((index) => idAt(plan, index)),
    ),
    steps: [...ids].map((id) => ({
      id,
      start: { before: times.before.get(id)?.start ?? null, after: times.after.get(id)?.start ?? null },
      slack: { before: times.before.get(id)?.slack ?? null, after: times.after.get(id)?.slack ?? null },
    })),
    waits: both((side) =>
      [...timesOf(side)].flatMap(([step, { waits }]) => waits.map((wait) => ({ ...wait, step }))),
    ),
    findings: findingsEffect(checkOutline(before, check), checkOutline(after, check)),
  };
}
