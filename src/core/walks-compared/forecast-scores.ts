import { group } from "d3-array";
import type { ShareInterval } from "../statistics/index.ts";
import { brier, clusteredInterval, crps, mean } from "../statistics/index.ts";
import type { Duration } from "../units/index.ts";
import type { IssuedForecast, WalkForecasts } from "./issued-forecasts.ts";

/** Whether the bands of forecasts hold as often as they say: there are too few to tell, they do, or they are too narrow or too wide. */
export type ForecastVerdict = "too-few" | "hold" | "too-narrow" | "too-wide";

/** How forecasts did ([CMP2]). Scores of times are in ms, less is better. */
export interface ForecastScores {
  /** The forecasts that can be judged, and the walks that they are of. */
  readonly forecasts: number;
  readonly walks: number;
  /** The walks that cannot be judged, since they were not closed as complete. */
  readonly leftOut: number;
  /** The forecasts that cannot, since get-aheads were done that they had left out. */
  readonly ofShorter: number;
  /** How many of the 80 % bands held the finish, and the 95 % interval of their share, walk by walk; `null` without forecasts. */
  readonly held: number;
  readonly interval: ShareInterval | null;
  /** The mean score of the forecasts, and of the plan of record for the same walks; `null` without any. */
  readonly crps: number | null;
  readonly plannedCrps: number | null;
  /** The score of the chance of the limit; `null` without a limit. */
  readonly brier: number | null;
  readonly verdict: ForecastVerdict;
}

const ENOUGH_FORECASTS = 40;
const ENOUGH_WALKS = 5;
const SAID = 0.8;

interface Judged {
  readonly of: WalkForecasts;
  readonly one: IssuedForecast;
  readonly finish: Duration;
}

/** Returns how the forecasts of walks did, judged by the walks that were closed as complete. */
export function forecastScores(walks: readonly WalkForecasts[]): ForecastScores {
  const complete = walks.filter(({ finish }) => finish !== null);
  const all = complete.flatMap((of) =>
    of.finish === null ? [] : of.issued.map((one): Judged => ({ of, one, finish: of.finish as Duration })),
  );
  const judged = all.filter(({ one }) => !one.isOfShorter);
  const held = judged.filter(isHeld).length;
  // The forecasts of one walk are held against one finish, so that they hold or miss together.
  const byWalk = [...group(judged, ({ of }) => of.walk).values()].map((of) => ({
    count: of.filter(isHeld).length,
    of: of.length,
  }));
  const interval = byWalk.length === 0 ? null : clusteredInterval(byWalk);
  const inWalks = byWalk.length;
  const scored = judged.flatMap(({ of, one, finish }) => {
    const [own, planned] = [scoreOf(one.risk.finishes, finish), scoreOf(of.planned?.finishes, finish)];
    return own === null || planned === null ? [] : [{ own, planned }];
  });
  const chances = judged.flatMap(({ of, one, finish }) =>
    of.limit === null || one.risk.withinLimit === null
      ? []
      : [{ chance: one.risk.withinLimit, cameTrue: finish <= of.limit }],
  );
  const isEnough = judged.length >= ENOUGH_FORECASTS && inWalks >= ENOUGH_WALKS;
  return {
    forecasts: judged.length,
    walks: inWalks,
    leftOut: walks.length - complete.length,
    ofShorter: all.length - judged.length,
    held,
    interval,
    crps: scored.length === 0 ? null : mean(scored.map(({ own }) => own)),
    plannedCrps: scored.length === 0 ? null : mean(scored.map(({ planned }) => planned)),
    brier: brier(chances),
    verdict: isEnough && interval ? verdictOf(interval) : "too-few",
  };
}

/** A band whose end is past every window holds no finish that came: it said that there would be none. */
const isHeld = ({ one, finish }: Judged): boolean => {
  const { p10, p90 } = one.risk;
  return p10 !== null && p90 !== null && p10 <= finish && finish <= p90;
};

const scoreOf = (finishes: Float64Array | undefined, finish: Duration): number | null =>
  finishes === undefined || finishes.length === 0 ? null : crps(finishes, finish);

function verdictOf({ from, to }: ShareInterval): ForecastVerdict {
  if (to < SAID) return "too-narrow";
  return from > SAID ? "too-wide" : "hold";
}
