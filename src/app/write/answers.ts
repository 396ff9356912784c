import { CheckMemory, checkInTurn } from "../../core/check/index.ts";
import type { PlanOptions, RiskModel, Timeline } from "../../core/plan/index.ts";
import { planOf, riskModelOf } from "../../core/plan/index.ts";
import type { Finding } from "../../core/procedure/index.ts";
import { outlineOf, readProcedure } from "../../core/procedure/index.ts";
import type { Duration, StepId } from "../../core/units/index.ts";
import type { CrewOffers } from "../../core/write/index.ts";
import { offersAt } from "../../core/write/index.ts";
import type { WrittenTimeline } from "./written-timeline.ts";
import { writtenTimeline } from "./written-timeline.ts";

/** A question about a manuscript; answers name it by its number. */
export interface WriteRequest {
  readonly number: number;
  readonly text: string;
  readonly start: PlanOptions["start"];
  readonly light: PlanOptions["light"];
  /** Whether its timeline is drawn. */
  readonly isDrawn: boolean;
}

/** A question about what everybody can do when a step begins, in the manuscript of the question of this number. */
export interface OffersRequest {
  readonly number: number;
  readonly step: string;
}

/** What the plan of a manuscript comes to. */
export interface WrittenPlan {
  /** PET; `null` without a plan. */
  readonly finish: Duration | null;
  readonly margin: Duration | null;
  /** What is drawn of it, or why nothing can be; `null` where that was not asked for. */
  readonly timeline: WrittenTimeline | null;
}

/** What a worker says about a manuscript, part by part. */
export type WriteAnswer =
  /** `model` is to be sampled for the chance; `null` where there is no plan, or no limit to be within. */
  | { readonly number: number; readonly plan: WrittenPlan; readonly model: RiskModel | null }
  /** Findings come without mends first; `isTried` once these were tried. */
  | { readonly number: number; readonly findings: readonly Finding[]; readonly isTried: boolean };

/** What everybody can do when a step begins; `null` where that cannot be told, since it is not in the plan. */
export interface OffersAnswer extends OffersRequest {
  readonly offers: readonly CrewOffers[] | null;
}

/** What is remembered from one question about a manuscript to the next. */
export class AnswerMemory {
  readonly checks = new CheckMemory();
  /** The last plan; `null` before there is one. */
  planned: { readonly number: number; readonly timeline: Timeline | null } | null = null;
}

/** What everybody can do when a step begins, by the plan that was told last; `null` while that is not of the question's manuscript. */
export function offersOn({ number, step }: OffersRequest, { planned }: AnswerMemory): OffersAnswer | null {
  if (planned?.number !== number) return null;
  return { number, step, offers: planned.timeline && offersAt(planned.timeline, step as StepId) };
}

/**
 * Answers about a manuscript, the quickest first ([WRT4]): its plan, its findings, and these with mends that were tried. It pauses behind
 * each answer and before each mend, so that a question nobody asks any more can be left there.
 */
export function* answersOn(
  { number, text, start, light, isDrawn }: WriteRequest,
  memory: AnswerMemory,
): Generator<WriteAnswer | null> {
  const options = { start: start ?? null, light: light ?? null };
  const read = readProcedure(text);
  const plan = read.procedure ? planOf(outlineOf(read.procedure), options) : null;
  memory.planned = { number, timeline: plan?.timeline ?? null };
  const course = plan?.timeline?.course ?? null;
  yield {
    number,
    plan: {
      finish: course?.finish ?? null,
      margin: plan?.margin ?? null,
      timeline: isDrawn ? writtenTimeline(plan, read.findings) : null,
    },
    model: course && plan?.margin != null ? riskModelOf(course) : null,
  };
  const { findings, tryMends } = checkInTurn(read, options, memory.checks);
  yield { number, findings, isTried: tryMends === null };
  if (!tryMends) return;
  const trying = tryMends();
  let next = trying.next();
  for (; !next.done; next = trying.next()) yield null;
  yield { number, findings: next.value, isTried: true };
}
