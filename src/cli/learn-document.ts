import type { Learned, LearnedStep, LearningCurve, ProposedTime, WalkRecord } from "../core/learn/index.ts";
import { offeredChange, offerMessage } from "../core/learn/index.ts";
import { formatInstant, inSeconds } from "../core/units/index.ts";
import type { ForecastScores } from "../core/walks-compared/index.ts";
import { inWords } from "../words/index.ts";

const inSecondsOf = (minutes: number) => minutes * 60;

const times = ({ low, likely, high }: ProposedTime) => ({
  low: inSecondsOf(low),
  likely: inSecondsOf(likely),
  high: inSecondsOf(high),
});

const stepDocument = (step: LearnedStep) => {
  const { entry, planned, observations, weight, belief, band } = step;
  return {
    step: entry.step.id,
    n: observations.length,
    weight,
    ...belief,
    p10: inSecondsOf(band.p10),
    p50: inSecondsOf(band.p50),
    p90: inSecondsOf(band.p90),
    proposal: step.offer === "offered" ? times(step.moved) : null,
    why: inWords(offerMessage(step)),
    offer: step.offer,
    planned: {
      low: inSeconds(planned.low),
      likely: inSeconds(planned.likely),
      high: inSeconds(planned.high),
    },
    share: step.share,
    spread: step.spreadRatio,
    thin: step.isThin,
    rehearsedOnly: step.isRehearsedOnly,
    change: offeredChange(step),
    observations: observations.map((one) => ({
      walk: one.walk,
      mode: one.mode,
      revision: one.revision,
      by: one.who,
      seconds: inSecondsOf(one.minutes),
      at: inSeconds(one.at),
      weight: one.weight,
      off: one.off,
      outlier: one.isOutlier,
      brokenOff: one.isBrokenOff,
      reopened: one.isReopened,
      held: one.isHeld,
      start: one.isStartSaid ? "tapped" : "inferred",
    })),
  };
};

/** A slope that cannot be told from chance, or of too few walks, is not printed at all. */
const learningDocument = (curve: LearningCurve | null) =>
  curve?.isClaimed
    ? {
        walks: curve.walks,
        steps: curve.steps,
        b: curve.slope,
        se: curve.standardError,
        rate: curve.rate,
        theilSen: curve.check,
      }
    : null;

/** How forecasts did, as JSON: scores of times in seconds, shares from 0 to 1; `verdict` is `null` where there are too few. */
export function forecastDocument(scores: ForecastScores): object {
  const seconds = (time: number | null) => (time === null ? null : inSeconds(time));
  return {
    n: scores.forecasts,
    walks: scores.walks,
    leftOut: scores.leftOut,
    ofShorter: scores.ofShorter,
    held: scores.held,
    wilson: scores.interval && [scores.interval.from, scores.interval.to],
    crps: seconds(scores.crps),
    crpsPlanned: seconds(scores.plannedCrps),
    brier: scores.brier,
    verdict: scores.verdict === "too-few" ? null : scores.verdict,
  };
}

/** What walks tell of a procedure, as one JSON document: times in seconds, `mu` and `beta` of ln minutes. */
export function learnDocument(
  records: readonly WalkRecord[],
  learned: Learned,
  scores: ForecastScores,
): object {
  const { procedure } = learned.outline;
  return {
    procedure: { id: procedure.id, revision: procedure.revision ?? null },
    walks: records.map(({ ledger, began }) => ({
      walk: ledger.opened.walk,
      mode: ledger.opened.mode,
      revision: ledger.opened.procedure.outline.procedure.revision ?? null,
      began: formatInstant(began),
    })),
    kappa0: learned.plannerWeight,
    steps: learned.steps.map(stepDocument),
    learning: learningDocument(learned.learning),
    forecasts: forecastDocument(scores),
    unmatched: learned.unmatched.map(({ walk, entry }) => ({ walk, step: entry.step.id })),
    inOneGo: learned.inOneGo,
  };
}
