import { planOf } from "../plan/index.ts";
import type { Outline, OutlineStep, StepTime } from "../procedure/index.ts";
import type { StepId } from "../units/index.ts";
import type { LearningCurve } from "./learning-curve.ts";
import { learningCurve } from "./learning-curve.ts";
import type { Observation } from "./observation.ts";
import { evidenceOf } from "./observation.ts";
import { plannerWeight } from "./planner-weight.ts";
import type { Offer, ProposedTime } from "./proposal.ts";
import { movedTime, offerOf } from "./proposal.ts";
import { isSameWork } from "./same-work.ts";
import type { Band, Belief } from "./step-model.ts";
import { bandOf, estimateOf, halfOf, posteriorOf, priorOf, spreadRatio } from "./step-model.ts";
import type { WalkRecord } from "./walk-record.ts";
import type { Weighed } from "./weigh.ts";
import { weighed } from "./weigh.ts";

/** What walks tell of one step of a procedure. Times are in minutes unless they are the planner's own. */
export interface LearnedStep {
  readonly entry: OutlineStep;
  /** The planner's figures. */
  readonly planned: StepTime;
  /** In order of the walks. */
  readonly observations: readonly Weighed[];
  /** The sum of the weights. */
  readonly weight: number;
  /** The share of the evidence in the mean: zero without any, near one with much. */
  readonly share: number;
  readonly belief: Belief;
  /** The band of what the planner's figures alone let expect, and of what they and the walks do. */
  readonly plannedBand: Band;
  readonly band: Band;
  /** The spread of the belief over that of the planner's figures. */
  readonly spreadRatio: number;
  /** The planner's figures as the evidence moves them, offered or not. */
  readonly moved: ProposedTime;
  readonly offer: Offer;
  /** True when there are so few walks, or they weigh so little, that another one may change the figures much. */
  readonly isThin: boolean;
  /** True when only rehearsals tell of it, which says nothing of how fast a live walk is. */
  readonly isRehearsedOnly: boolean;
}

/** What walks tell of a procedure. */
export interface Learned {
  readonly outline: Outline;
  /** How many walks the planner's figures count for (κ0). */
  readonly plannerWeight: number;
  /** The steps in reading order, without those planned to take no time. */
  readonly steps: readonly LearnedStep[];
  readonly learning: LearningCurve | null;
  /** Observations of steps that the procedure does not have, or has as other work. */
  readonly unmatched: readonly Observation[];
  /** The number of steps that were tapped done in one go with others, and tell nothing each. */
  readonly inOneGo: number;
}

const THIN_WALKS = 3;
const THIN_WEIGHT = 2;

/**
 * Returns what walks tell of a procedure ([LRN1] to [LRN6]). The walks are of this procedure, in order of when they began, as
 * {@link walkRecords} gives them. `renamed` says which id an author has given to what had another one.
 */
export function learnFrom(
  records: readonly WalkRecord[],
  outline: Outline,
  renamed: ReadonlyMap<StepId, StepId> = new Map(),
): Learned {
  const evidence = records.map(evidenceOf);
  const byStep = new Map<StepId, Observation[]>();
  const unmatched: Observation[] = [];
  for (const { observations } of evidence) {
    for (const observation of observations) {
      const { step } = observation.entry;
      const own = outline.step(renamed.get(step.id) ?? step.id);
      if (!own || !isSameWork(step, own.step)) {
        unmatched.push(observation);
        continue;
      }
      const known = byStep.get(own.step.id);
      if (known) known.push(observation);
      else byStep.set(own.step.id, [observation]);
    }
  }
  // A way without a time of its own takes what the routes say.
  const { times } = planOf(outline).whereabouts;
  const open = outline.steps.flatMap((entry) => {
    const planned = times[entry.index];
    const estimate = planned && estimateOf(planned);
    if (!planned || !estimate) return [];
    return [{ entry, planned, estimate, observations: byStep.get(entry.step.id) ?? [] }];
  });
  const kappa = plannerWeight(open);
  const steps = open.map(({ entry, planned, estimate, observations }): LearnedStep => {
    const prior = priorOf(estimate, kappa);
    const own = weighed(prior, observations);
    const weight = own.reduce((sum, one) => sum + one.weight, 0);
    const belief = posteriorOf(prior, own);
    const half = halfOf(belief);
    const ratio = spreadRatio(half, estimate);
    const moved = movedTime(belief, ratio, estimate, planned);
    return {
      entry,
      planned,
      observations: own,
      weight,
      share: weight / belief.kappa,
      belief,
      plannedBand: bandOf(prior),
      band: bandOf(belief, half),
      spreadRatio: ratio,
      moved,
      offer: offerOf(own.length, ratio, planned, moved),
      isThin: own.length < THIN_WALKS || weight < THIN_WEIGHT,
      isRehearsedOnly: own.length > 0 && own.every(({ mode }) => mode === "rehearsal"),
    };
  });
  const rehearsals = records
    .filter(({ ledger }) => ledger.opened.mode === "rehearsal")
    .map(({ ledger }) => ledger.opened.walk);
  return {
    outline,
    plannerWeight: kappa,
    steps,
    learning: learningCurve(
      rehearsals,
      steps.map(({ entry, observations }) => ({ step: entry.step.id, observations })),
    ),
    unmatched,
    inOneGo: evidence.reduce((sum, one) => sum + one.inOneGo.length, 0),
  };
}
