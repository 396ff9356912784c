import type { Plan } from "../core/plan/index.ts";
import { riskModelOf, sampleRisk } from "../core/plan/index.ts";
import type { StepId } from "../core/units/index.ts";
import { inSeconds } from "../core/units/index.ts";

/** The risk of a plan as one JSON document. Times are in seconds of PET, shares from 0 to 1. */
export interface RiskDocument {
  readonly samples: number;
  readonly seed: number;
  readonly mean: number | null;
  readonly sd: number | null;
  readonly p10: number | null;
  readonly p50: number | null;
  readonly p90: number | null;
  /** `null` without an elapsed limit. */
  readonly withinLimit: number | null;
  /** Share of samples in which at least one step ran out of spans of its windows. */
  readonly unfit: number;
  /** What is missed in those samples: the share of all samples by step and by window. */
  readonly missed: {
    readonly steps: Readonly<Record<string, number>>;
    readonly windows: Readonly<Record<string, number>>;
  };
  /** The bounds that some samples break, with the share of all samples: `doneBy`, or `within` after another step. */
  readonly broken: readonly ({ readonly step: string; readonly share: number } & (
    | { readonly doneBy: number }
    | { readonly after: string; readonly within: number }
  ))[];
  /** For each step, the share of samples in which it was on the critical path. */
  readonly criticality: Readonly<Record<string, number>>;
  /** For each step, the rank correlation of its duration with the finish; zero for fixed durations. */
  readonly influence: Readonly<Record<string, number>>;
}

const seconds = (time: number | null) => (time === null ? null : inSeconds(time));

/** Samples a plan `samples` times ([PLN5]). Returns `null` when there is no timeline to sample. */
export function riskDocument(plan: Plan, samples: number, seed: number): RiskDocument | null {
  if (!plan.timeline) return null;
  const { course } = plan.timeline;
  const risk = sampleRisk(riskModelOf(course), samples, seed);
  const byStep = (values: ReadonlyMap<StepId, number>) =>
    Object.fromEntries([...course.steps.keys()].map((step) => [step, values.get(step) ?? 0]));
  return {
    samples: risk.samples,
    seed: risk.seed,
    mean: seconds(risk.mean),
    sd: seconds(risk.sd),
    p10: seconds(risk.p10),
    p50: seconds(risk.p50),
    p90: seconds(risk.p90),
    withinLimit: risk.withinLimit,
    unfit: risk.unfit,
    missed: {
      steps: Object.fromEntries(risk.missed.steps),
      windows: Object.fromEntries(risk.missed.windows),
    },
    broken: risk.broken.map(({ bound, share }) =>
      "doneBy" in bound
        ? { step: bound.step, doneBy: inSeconds(bound.doneBy), share }
        : { step: bound.step, after: bound.after, within: inSeconds(bound.within), share },
    ),
    criticality: byStep(risk.criticality),
    influence: byStep(risk.influence),
  };
}
