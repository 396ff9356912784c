import { checkProcedureText } from "../../core/check/index.ts";
import type { PlanOptions } from "../../core/plan/index.ts";
import { planOf, riskModelOf, sampleRisk } from "../../core/plan/index.ts";
import type { Finding } from "../../core/procedure/index.ts";
import { outlineOf, readProcedure } from "../../core/procedure/index.ts";
import type { Duration, StepId } from "../../core/units/index.ts";

/** A question about a manuscript; answers name it by its number. */
export interface WriteRequest {
  readonly number: number;
  readonly text: string;
  readonly start: PlanOptions["start"];
  readonly light: PlanOptions["light"];
}

/** What the plan of a manuscript comes to. */
export interface WrittenPlan {
  /** PET; `null` without a plan. */
  readonly finish: Duration | null;
  readonly margin: Duration | null;
  readonly times: ReadonlyMap<StepId, { readonly start: Duration; readonly finish: Duration | null }>;
}

/** What a worker says about a manuscript, part by part. */
export type WriteAnswer =
  | { readonly number: number; readonly plan: WrittenPlan }
  | { readonly number: number; readonly findings: readonly Finding[] }
  | { readonly number: number; readonly within: number | null };

const SAMPLES = 10_000;
const SEED = 1;
const NO_PLAN: WrittenPlan = { finish: null, margin: null, times: new Map() };

/** Answers about a manuscript, the quickest first ([WRT4]): its plan, its findings with tried mends, its chance of being within the limit. */
export function answerOn(
  { number, text, start, light }: WriteRequest,
  tell: (answer: WriteAnswer) => void,
): void {
  const options = { start: start ?? null, light: light ?? null };
  const { procedure } = readProcedure(text);
  const plan = procedure ? planOf(outlineOf(procedure), options) : null;
  const course = plan?.timeline?.course ?? null;
  tell({
    number,
    plan:
      plan && course
        ? {
            finish: course.finish,
            margin: plan.margin,
            times: new Map(
              [...course.steps].map(([id, step]) => [id, { start: step.start, finish: step.finish }]),
            ),
          }
        : NO_PLAN,
  });
  tell({ number, findings: checkProcedureText(text, options).findings });
  tell({
    number,
    within: course ? sampleRisk(riskModelOf(course), SAMPLES, SEED, { influence: false }).withinLimit : null,
  });
}
