import type { CourseStep } from "../core/course/index.ts";
import type { WaitTotal } from "../core/review/index.ts";
import type { Duration } from "../core/units/index.ts";
import { formatInstant, inSeconds } from "../core/units/index.ts";
import type {
  ComparedStep,
  ComparedWalk,
  ComparedWalks,
  ForecastScores,
  GroupDifference,
  MinuteQuantiles,
} from "../core/walks-compared/index.ts";
import { inWords } from "../words/index.ts";
import { forecastDocument } from "./learn-document.ts";

/** Two groups of walks and how they differ step by step. */
export interface Groups {
  readonly first: readonly string[];
  readonly second: readonly string[];
  readonly differences: readonly GroupDifference[];
}

const seconds = (time: Duration | null) => (time === null ? null : inSeconds(time));

const quantiles = (of: MinuteQuantiles | null) =>
  of && {
    p10: of.p10 * 60,
    p25: of.p25 * 60,
    p50: of.p50 * 60,
    p75: of.p75 * 60,
    p90: of.p90 * 60,
  };

const stepOfWalk = ({ step, start, finish, stage }: CourseStep) => ({
  step,
  start: inSeconds(start),
  finish: inSeconds(finish),
  skipped: stage === "skipped",
});

const wait = ({ crew, on, time }: WaitTotal & { readonly crew: string }) => ({
  crew,
  on,
  seconds: inSeconds(time),
});

const walkDocument = ({ began, waits, order, lanes, deviations, steps, ...one }: ComparedWalk) => ({
  walk: one.walk,
  mode: one.mode,
  revision: one.revision,
  began: formatInstant(began),
  end: one.end,
  finish: seconds(one.finish),
  plannedFinish: seconds(one.plannedFinish),
  difference: seconds(one.finishDifference),
  margin: seconds(one.margin),
  orderKept: order.share,
  precedences: { lookedAt: order.lookedAt, broken: order.broken },
  lanes,
  waits: waits.map(wait),
  deviations: deviations.map(({ kind, step, text, at }) => ({
    kind,
    step,
    text: inWords(text),
    at: formatInstant(at),
  })),
  steps: steps.map(stepOfWalk),
});

const stepDocument = ({ entry, planned, observations, spread, ...of }: ComparedStep) => ({
  step: entry.step.id,
  n: observations.filter(({ isBrokenOff }) => !isBrokenOff).length,
  planned: {
    low: inSeconds(planned.low),
    likely: inSeconds(planned.likely),
    high: inSeconds(planned.high),
  },
  times: observations.map(({ walk, mode, minutes, isBrokenOff, isOutlier }) => ({
    walk,
    mode,
    seconds: minutes * 60,
    brokenOff: isBrokenOff,
    outlier: isOutlier,
  })),
  quantiles: quantiles(of.quantiles),
  spread,
});

/** Many walks side by side, as one JSON document. Times are in seconds of PET, shares from 0 to 1 ([CMP1]). */
export function walksDocument(
  { outline, walks, finish, steps }: ComparedWalks,
  groups: Groups | null,
  scores: ForecastScores,
): object {
  const { procedure } = outline;
  return {
    procedure: { id: procedure.id, revision: procedure.revision ?? null },
    walks: walks.map(walkDocument),
    finish: {
      n: walks.filter((one) => one.end === "complete" && one.finish !== null).length,
      quantiles: quantiles(finish),
    },
    steps: steps.map(stepDocument),
    groups: groups && {
      first: groups.first,
      second: groups.second,
      steps: groups.differences.map(({ entry, walks: n, ratio, p, adjusted, isShown }) => ({
        step: entry.step.id,
        n,
        ratio,
        p,
        adjusted,
        shown: isShown,
      })),
    },
    forecasts: forecastDocument(scores),
  };
}
